package org.slatwright.design.steps;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Role;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;
import org.slatwright.design.wood.Climate;

/**
 * Finish goes on before the slats are fixed where a brush would not reach between them, and on the
 * whole rack where it does, since touching up nail heads comes free then: common practice, no
 * source.
 */
final class FinishTasks {

  static final String PARTS = "coat-parts";
  static final String RACK = "coat-rack";

  /** Labels of oils and varnishes: 8 to 12 square metres a litre; from memory. */
  private static final double M2_PER_LITRE = 8;

  private static final String RAGS =
      "Ventilate. Rags with drying oil heat themselves and burn: dry them spread flat outdoors, or"
          + " keep them in water in a lidded can.";

  private FinishTasks() {}

  /** The frames and slats, each by itself; empty where the rack is coated as a whole. */
  static List<Task> ofParts(Build build) {
    return isFirst(build.rack()) ? List.of(parts(build)) : List.of();
  }

  /** The whole rack; empty where its parts were coated. */
  static List<Task> ofRack(Build build) {
    return isFirst(build.rack()) ? List.of() : List.of(rack(build));
  }

  /** Whether parts are coated before the slats are fixed. */
  static boolean isFirst(Rack rack) {
    Length brush = rack.units().metricOrInch(Length.mm(25), Length.inches(1, 1));
    return rack.rows().stream().anyMatch(row -> isTight(row, brush));
  }

  private static boolean isTight(ShelfRow row, Length brush) {
    return row.slats().size() > 1 && row.gap().isLessThan(brush);
  }

  private static Task parts(Build build) {
    return coat(
            Task.named(PARTS, "Coat frames and slats")
                .does(
                    "Before the slats are fixed: no brush reaches between them afterwards. Leave the"
                        + " upper edges of the rails, where slats lie, until last and thin.")
                .with(Build.parts(build.assembly().pieces(Role.SLAT))),
            build)
        .after(FrameTasks.ready(build))
        .after(CuttingTasks.SAND_SLATS)
        .waits(Times.DRY, "the finish dries; its label has the last word")
        .endsWhen("A dry hand leaves no mark on any face.");
  }

  private static Task rack(Build build) {
    return coat(
            Task.named(RACK, "Coat the rack")
                .does(
                    "Set the heads of the fixings below the face first, if you want them filled."),
            build)
        .after(ShelfTasks.lastOf(build))
        .waits(Times.HARD, "the finish hardens; its label has the last word")
        .endsWhen("No face is dry or runs when seen against the light.");
  }

  private static Task.Draft coat(Task.Draft draft, Build build) {
    Rack rack = build.rack();
    if (rack.climate() == Climate.OUTDOORS) {
      draft.does(
          "Coat end grain until it takes no more, the feet above all: water comes in there.");
    }
    long decilitres =
        Math.round(Math.ceil(build.quantities().finishArea().m2() / M2_PER_LITRE * 10));
    return draft
        .supplies(
            "finish for "
                + build.quantities().finishArea().withUnit(rack.units())
                + ", a coat takes about "
                + litres(rack, decilitres))
        .tools("brush or rag", "gloves")
        .takes(Times.SET_UP + Times.COAT_M2 * build.quantities().finishArea().m2())
        .minding(RAGS);
  }

  /** In an inch plan by the fluid ounce, 29.6 ml. */
  private static String litres(Rack rack, long decilitres) {
    return rack.units()
        .metricOrInch(
            decilitres / 10 + "." + decilitres % 10 + " l",
            Math.round(decilitres * 100 / 29.6) + " fl oz");
  }
}
