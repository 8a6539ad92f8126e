package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.Step;

/**
 * Under what name a device keeps the ticks of a plan. A page of the same rack finds them again;
 * once there is something else to buy, to cut or to do it has another name, since ticks of another
 * rack would mislead.
 */
final class PlanKey {

  private PlanKey() {}

  static String of(Plan plan) {
    List<String> telling = new ArrayList<>(List.of(plan.title()));
    plan.assembly().parts().stream().map(PlanKey::part).forEach(telling::add);
    plan.cutting().buying().stream().map(Purchase::what).forEach(telling::add);
    plan.cutting().timbers().stream()
        .flatMap(timber -> timber.boards().stream())
        .map(PlanKey::board)
        .forEach(telling::add);
    plan.work().steps().stream().map(Step::id).forEach(telling::add);
    return "slatwright-" + Digest.hex(String.join("\n", telling)).substring(0, 16);
  }

  private static String part(Part part) {
    Shape shape = part.shape();
    return String.join(
        " ",
        part.mark(),
        Integer.toString(part.quantity()),
        shape.length().toString(),
        shape.width().toString(),
        shape.thickness().toString());
  }

  private static String board(CutBoard board) {
    return String.join(" ", board.marks()) + " " + board.length();
  }
}
