package org.slatwright.design.cutting;

import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.design.sizing.Rack;

/** Plans the cutting of a rack. */
public final class Cutting {

  private Cutting() {}

  /** What to buy and how every stock length is cut. */
  public static CuttingPlan plan(Rack rack, Assembly assembly) {
    return CuttingPlan.NONE;
  }
}
