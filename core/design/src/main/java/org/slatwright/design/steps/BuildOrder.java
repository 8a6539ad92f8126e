package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.jig.MadeJig;
import org.slatwright.design.sizing.Rack;

/** Tells how a rack is built. */
public final class BuildOrder {

  private BuildOrder() {}

  /** Every step from the timber to the rack in its place. */
  public static OrderOfWork of(
      Rack rack, Assembly assembly, Quantities quantities, MadeJig jig, CuttingPlan cutting) {
    Build build = new Build(rack, assembly, quantities, jig, cutting);
    List<Task> tasks = new ArrayList<>(TimberTasks.of(build));
    tasks.addAll(CuttingTasks.of(build));
    tasks.addAll(LayingOutTasks.of(build));
    tasks.addAll(JigTasks.of(build));
    tasks.addAll(FrameTasks.of(build));
    tasks.addAll(FinishTasks.ofParts(build));
    tasks.addAll(ShelfTasks.of(build));
    tasks.addAll(FinishTasks.ofRack(build));
    tasks.addAll(StandingTasks.of(build));
    return Schedule.of(tasks);
  }
}
