package org.slatwright.design.checks;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.plan.Finding;

/**
 * Always says to anchor the rack to the wall, since children climb what no calculation foresees: as
 * a warning where another rule of stability warns, or from 27 in (686 mm) up, the height from which
 * ASTM F2057-23 covers clothing storage. One anchor at the top of each frame: common practice, no
 * source.
 */
final class Anchor {

  private static final Length TALL = Length.inches(27, 1);

  private static final Map<String, String> FAILING =
      Map.of(
          "tip-forward", "push forward",
          "tip-sideways", "push sideways",
          "shelf-edge-pull", "pull on its slats",
          "slope", "lean",
          "slenderness", "slenderness");

  private Anchor() {}

  /**
   * The advice; a note once the rack file says that it is heeded.
   *
   * @param unsteady the other rules of stability that it fails
   */
  static Finding finding(Design design, List<String> unsteady) {
    Figures figures = new Figures(design.rack().lengths());
    Length height = design.assembly().extent().size(Axis.Z);
    boolean low = height.isLessThan(TALL);
    boolean steady = unsteady.isEmpty();
    Measure.Compared compared = figures.measured().compare(height.inMm(), TALL.inMm());
    boolean safe = design.rack().anchored() || steady && low;
    String once = safe ? "" : "; then set " + StandFree.ANCHORED;
    return new Finding(
        safe ? Finding.Severity.NOTE : Finding.Severity.WARNING,
        "anchor",
        "rack",
        "it can tip over when somebody climbs it, hangs on it or runs into it",
        compared.value()
            + " high"
            + (low && !steady ? ", but not steady (" + words(unsteady) + ")" : ""),
        "to stand free below " + compared.limit() + ", and steady",
        ("fix the top of each of its %s frames to the wall with a bracket or strap, screwed into a"
                    + " stud or masonry, never into plasterboard alone; keep heavy things low; local"
                    + " codes come first")
                .formatted(design.rack().frames())
            + once,
        "ASTM F2057-23; tip-over advice of the US CPSC");
  }

  private static String words(List<String> unsteady) {
    return unsteady.stream().map(FAILING::get).collect(Collectors.joining(", "));
  }
}
