package org.slatwright.design.jig;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;

/**
 * What came of making a jig.
 *
 * @param jig the jig, or empty when the stock does not allow one
 * @param offcutJig another, made from offcuts without any machine
 * @param findings why there is none; empty when there is one
 */
public record MadeJig(Optional<Jig> jig, Optional<Jig> offcutJig, List<Finding> findings) {

  public MadeJig {
    findings = List.copyOf(findings);
  }

  /** The jig that holes are drilled with: from offcuts where none can be cut from sheet. */
  public Optional<Jig> inHand() {
    return jig.or(() -> offcutJig);
  }

  static MadeJig none(Optional<Jig> offcutJig, List<Finding> why) {
    return new MadeJig(Optional.empty(), offcutJig, why);
  }
}
