package org.slatwright.design.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard.Cut;

/** A board while pieces are laid on it. */
final class Layout {

  private static final Comparator<Cut> FROM_THE_FIRST_END =
      Comparator.comparing(Cut::from).thenComparing(Cut::across);

  private final Blank blank;
  private final List<Cut> chosen;
  private final List<Run> runs;

  /** With pieces whose places were chosen before, beside its lanes. */
  Layout(Blank blank, List<Cut> chosen, Length kerf) {
    this.blank = blank;
    this.chosen = List.copyOf(chosen);
    this.runs = blank.lanes().stream().map(lane -> new Run(lane, kerf)).toList();
  }

  Layout(Blank blank, Length kerf) {
    this(blank, List.of(), kerf);
  }

  Blank blank() {
    return blank;
  }

  List<Run> runs() {
    return runs;
  }

  /** What is over of each lane; pieces that were chosen before leave lanes of their own. */
  List<Run> rests() {
    return chosen.isEmpty() ? Ripping.rests(runs) : runs;
  }

  boolean isTouched() {
    return !chosen.isEmpty() || runs.stream().anyMatch(Run::isTouched);
  }

  /** Every piece, from the first end on. */
  List<Cut> cuts() {
    return Stream.concat(chosen.stream(), runs.stream().flatMap(run -> run.cuts().stream()))
        .sorted(FROM_THE_FIRST_END)
        .toList();
  }
}
