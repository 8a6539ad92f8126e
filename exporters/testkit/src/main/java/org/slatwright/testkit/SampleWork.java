package org.slatwright.testkit;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/** A short order of work with every kind of statement in it, put together by hand. */
final class SampleWork {

  private SampleWork() {}

  /** For a rack with parts {@code U}, {@code R} and {@code D}. */
  static OrderOfWork of(Length upright, Length diagonal) {
    return new OrderOfWork(
        List.of(cut(upright), glue(diagonal), dowel()), new Minutes(75), Minutes.hours(25));
  }

  private static Step cut(Length upright) {
    return new Step(
        1,
        "cut-frame-stock",
        "Cut the frame stock",
        List.of(
            Wording.of("Set the stop block to {} and cut every upright at it.", upright),
            Wording.of("Mark each piece as it leaves the saw.")),
        List.of(new Step.Parts("U", 4), new Step.Parts("R", 2)),
        List.of(),
        List.of(),
        List.of("saw", "stop block"),
        List.of(),
        new Minutes(30),
        Optional.empty(),
        List.of(),
        Wording.of("Held side by side, all of them end together."),
        "Keep both hands away from the blade.");
  }

  private static Step glue(Length diagonal) {
    return new Step(
        2,
        "glue-frame-1",
        "Glue frame 1",
        List.of(Wording.of("Spread glue on both faces and clamp.")),
        List.of(new Step.Parts("U", 2), new Step.Parts("R", 1)),
        List.of("U-1", "U-2", "R-1"),
        List.of("U-1", "U-2", "R-1"),
        List.of("clamps", "square"),
        List.of(Wording.of("2 clamps that open {}", diagonal), Wording.of("glue, about 6 g")),
        new Minutes(25),
        Optional.of(new Step.Wait(Minutes.hours(24), "the glue cures")),
        List.of(1),
        Wording.of("Both diagonals are {}.", diagonal),
        "");
  }

  private static Step dowel() {
    return new Step(
        3,
        "dowel-frame-1",
        "Drive the dowels of frame 1",
        List.of(Wording.of("Drive each dowel home with a mallet.")),
        List.of(new Step.Parts("D", 2)),
        List.of("D-1", "D-2"),
        List.of(),
        List.of("mallet"),
        List.of(),
        new Minutes(20),
        Optional.empty(),
        List.of(1, 2),
        Wording.of("No dowel stands proud."),
        "");
  }
}
