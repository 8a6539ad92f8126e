package org.slatwright.design.cutting;

import java.util.List;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Finding;

/**
 * How a rack is cut.
 *
 * @param findings pieces that the stock lengths at hand do not give
 */
public record CutRack(CuttingPlan plan, List<Finding> findings) {

  public CutRack {
    findings = List.copyOf(findings);
  }
}
