package org.slatwright.design.steps;

import java.util.List;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.Jig;

/** The drilling jig is made and tried while the glue of the first frame cures. */
final class JigTasks {

  static final String MAKE = "make-jig";

  private JigTasks() {}

  /** None where the stock allows no jig. */
  static List<Task> of(Build build) {
    return build.jig().jig().isPresent()
        ? List.of(fromSheet(build.jig().jig().get()))
        : build.jig().offcutJig().stream().map(JigTasks::fromOffcuts).toList();
  }

  private static Task fromSheet(Jig jig) {
    return tried(
        Task.named(MAKE, "Make the drilling jig")
            .does(
                "Cut its "
                    + jig.placed().size()
                    + " plates from sheet, by machine or by the templates, and glue them up as"
                    + " the sheet of the jig tells.")
            .tools("router, laser or fretsaw", "drill press", "clamps")
            .takes(Times.SET_UP + 50),
        jig);
  }

  private static Task fromOffcuts(Jig jig) {
    return tried(
        Task.named(MAKE, "Make the drilling jig from offcuts")
            .does("Make block, cheeks and register as the sheet of the jig tells.")
            .tools("saw", "drill press", "clamps")
            .takes(Times.SET_UP + 60)
            .after(CuttingTasks.id(Stock.FRAME), CuttingTasks.id(Stock.SLAT)),
        jig);
  }

  private static Task tried(Task.Draft draft, Jig jig) {
    return draft
        .does(
            "Try it with a bit of {} on two scraps of the frame stock, held as a joint.",
            jig.guideDiameter())
        .supplies("wood glue")
        .waits(Times.CLAMPED, "its glue sets")
        .minding("Clamp what is cut or drilled; no gloves or loose sleeves at a turning bit.")
        .endsWhen(
            "It slides on every upright, and the hole in a scrap joint comes out in the middle of"
                + " the rail.");
  }
}
