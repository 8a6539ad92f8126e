package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.templates.printing.Draft;

/** How far the dowel bit stands out of its stop: its tip below, the stop above. */
final class DepthGauge {

  private static final Length BESIDE_BIT = Length.mm(5);

  private final LengthFormat lengths;
  private final Joint.Pin pin;
  private final Optional<Jig> jig;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Mark> zones = new ArrayList<>();

  private DepthGauge(Assembly assembly, Optional<Jig> jig, LengthFormat lengths) {
    this.lengths = lengths;
    this.pin = assembly.joints().get(0).pins().get(0);
    this.jig = jig;
  }

  static Draft of(Assembly assembly, Optional<Jig> jig, LengthFormat lengths) {
    return new DepthGauge(assembly, jig, lengths).draft();
  }

  private Draft draft() {
    Length inRail = pin.railHole().depth();
    Length inWood = inRail.plus(pin.uprightHole().depth());
    Length all = jig.map(made -> inWood.plus(made.guideDepth())).orElse(inWood);
    Length diameter = pin.uprightHole().diameter();
    mark("cutting corners", Length.ZERO);
    mark(jig.isPresent() ? "stop without the jig" : "stop", inWood);
    zone("hole in the rail", Length.ZERO, inRail);
    zone("upright", inRail, inWood);
    if (all.isMoreThan(inWood)) {
      mark("stop with the jig", all);
      zone("guide of the jig", inWood, all);
    }
    Length width = diameter.plus(BESIDE_BIT.times(2));
    Extent bit =
        new Extent(new Point2(BESIDE_BIT, Length.ZERO), new Point2(BESIDE_BIT.plus(diameter), all));
    Extent upright = new Extent(new Point2(Length.ZERO, inRail), new Point2(width, inWood));
    return new Strip(
            "templates/depth-gauge",
            "Bit depth gauge",
            List.of(
                "Scale 1:1, for the bit of Ø " + lengths.withUnit(diameter),
                Advice.units(lengths) + " from the corners of its cutting edges"),
            Optional.empty(),
            new MarkedFace(width, all, List.of(upright), List.of(bit), List.of(), List.of()),
            LineKind.THIN,
            new Labels(marks),
            new Labels(zones),
            "tip of the bit",
            "its centre point lies below the line",
            use())
        .draft();
  }

  private void mark(String what, Length at) {
    marks.add(new Mark(at, what + " " + lengths.number(at)));
  }

  private void zone(String what, Length from, Length to) {
    zones.add(new Mark(from.plus(to).half(), what + " " + lengths.number(to.minus(from))));
  }

  private List<String> use() {
    List<String> use = new ArrayList<>();
    use.add(Advice.CHECK);
    use.add(
        "Take the plug of the drill out of its socket, or the battery off, before touching the bit.");
    use.add(
        "Hold the bit along the dashed lines, the corners of its cutting edges on the lowest line; a"
            + " centre point stands out below it.");
    use.add(
        jig.isPresent()
            ? "Set the stop to the uppermost line for drilling through the jig, or to the one below"
                + " for going on in the same hole when the jig is off."
            : "Set the stop to the uppermost line.");
    use.add(
        "Drill a trial hole in an offcut and measure its depth: the number counts, not the paper.");
    use.add(Advice.DRILLING);
    return use;
  }
}
