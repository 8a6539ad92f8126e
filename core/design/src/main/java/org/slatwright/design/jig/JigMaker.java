package org.slatwright.design.jig;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.model.Solid;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/** Makes the drilling jig of a rack. */
public final class JigMaker {

  private JigMaker() {}

  /** The jig for the rack's measured upright, rail and dowel, or why there can be none. */
  public static MadeJig make(Rack rack) {
    JigLimits limits = new JigLimits(rack);
    Optional<Jig> fromOffcuts = OffcutJig.of(rack);
    List<Finding> onStock = limits.onStock();
    if (!onStock.isEmpty()) {
      return MadeJig.none(fromOffcuts, onStock);
    }
    Saddle saddle = Saddle.of(rack);
    SaddlePlates plates = SaddlePlates.of(saddle);
    List<Finding> onPlates = limits.onPlates(plates.all(), saddle.web());
    return onPlates.isEmpty()
        ? new MadeJig(Optional.of(jig(rack, saddle, plates)), fromOffcuts, List.of())
        : MadeJig.none(fromOffcuts, onPlates);
  }

  /** The jig that was made for the rack, for a 3-D printer; none where there is none. */
  public static List<Solid> solids(Rack rack, MadeJig made) {
    if (made.jig().isEmpty()) {
      return List.of();
    }
    Saddle saddle = Saddle.of(rack);
    return new PrintedSaddle(saddle, SaddlePlates.of(saddle)).solids();
  }

  private static Jig jig(Rack rack, Saddle saddle, SaddlePlates plates) {
    return new Jig(
        plates.all(),
        plates.placed(),
        saddle.guideDiameter(),
        saddle.guideDepth(),
        saddle.holes(),
        saddle.clearance(),
        new JigUse(rack, saddle).steps());
  }
}
