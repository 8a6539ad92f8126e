package org.slatwright.design.jig;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.model.Solid;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;

/**
 * What came of making a jig.
 *
 * @param jig the jig, or empty when the stock does not allow one
 * @param solids the same for a 3-D printer
 * @param offcutJig another, made from offcuts without any machine
 * @param findings why there is none; empty when there is one
 */
public record MadeJig(
    Optional<Jig> jig, List<Solid> solids, Optional<Jig> offcutJig, List<Finding> findings) {

  public MadeJig {
    solids = List.copyOf(solids);
    findings = List.copyOf(findings);
  }

  static MadeJig none(Optional<Jig> offcutJig, List<Finding> why) {
    return new MadeJig(Optional.empty(), List.of(), offcutJig, why);
  }
}
