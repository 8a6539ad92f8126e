package org.slatwright.design.templates.printing;

import java.util.List;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/**
 * Lays drafts out on paper.
 *
 * @param title of the rack
 * @param units that its maker measures in
 * @param margin at every edge of the paper, where nothing is printed
 */
public record Printing(String title, Unit units, Paper paper, Length margin) {

  /** The drafts, whole and on as few pages as may be. */
  public Templates print(List<Draft> drafts) {
    return drafts.isEmpty() ? Templates.NONE : new Templates(List.of(), List.of());
  }
}
