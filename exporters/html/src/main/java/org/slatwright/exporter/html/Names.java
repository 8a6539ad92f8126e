package org.slatwright.exporter.html;

import org.slatwright.api.model.Part;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.SparePiece;

/**
 * What the marks on the pieces stand for.
 *
 * @param plan whose
 */
record Names(Plan plan) {

  /** Empty for a mark that the plan does not have. */
  String of(String mark) {
    return plan.assembly().parts().stream()
        .filter(part -> part.mark().equals(mark))
        .map(Part::name)
        .findFirst()
        .orElseGet(() -> ofSpare(mark));
  }

  private String ofSpare(String mark) {
    return plan.cutting().spares().stream()
        .filter(spare -> spare.mark().equals(mark))
        .map(SparePiece::name)
        .findFirst()
        .orElse("");
  }
}
