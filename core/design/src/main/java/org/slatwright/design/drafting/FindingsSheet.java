package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/** What the checks found, and the cautions, in words: a sheet to hang beside the bench. */
final class FindingsSheet {

  static final String NAME = "checks-and-cautions";
  static final String TITLE = "Checks and cautions";

  private FindingsSheet() {}

  /** As many sheets as they take; none where there is nothing to say. */
  static List<SheetDrawing> of(Rack rack, List<Finding> findings) {
    return findings.isEmpty()
        ? List.of()
        : TextSheet.of(rack, NAME, TITLE, width -> new FindingsText(findings, width).texts());
  }
}
