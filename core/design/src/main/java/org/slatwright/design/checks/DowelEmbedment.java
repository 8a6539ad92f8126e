package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;

/**
 * Whether dowels lie at least three diameters deep in the rail and in the upright: woodworking
 * practice, a 3/8 in dowel about 1 1/8 to 1 1/4 in deep in each part (WOOD magazine, tips for dowel
 * joinery).
 */
final class DowelEmbedment implements Rule {

  private static final int DIAMETERS = 3;

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    boolean inRail = rack.joint().embedment().isLessThan(rack.upright().depth());
    Length depth = inRail ? rack.joint().embedment() : rack.upright().depth();
    Length least = rack.joint().diameter().times(DIAMETERS);
    if (!depth.isLessThan(least)) {
      return Stream.empty();
    }
    Figures figures = new Figures(rack.lengths());
    return Stream.of(
        new Finding(
            Severity.WARNING,
            "dowel-embedment",
            "dowels",
            "depth of the dowels in the " + (inRail ? "rails" : "uprights"),
            figures.length(depth),
            "at least 3 diameters, " + figures.length(least),
            advice(rack),
            "WOOD magazine, tips for dowel joinery"));
  }

  private static String advice(Rack rack) {
    JointRemedies remedies = JointRemedies.of(rack);
    return Remedies.anyOf(
        List.of(
            remedies.deeper(DowelEmbedment::isDeep), remedies.otherDowel(DowelEmbedment::isDeep)));
  }

  private static boolean isDeep(JointCase joint) {
    Length depth = Length.min(joint.embedment(), joint.rack().upright().depth());
    return !depth.isLessThan(joint.diameter().times(DIAMETERS));
  }
}
