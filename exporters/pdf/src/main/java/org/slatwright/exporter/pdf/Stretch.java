package org.slatwright.exporter.pdf;

import java.util.List;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.measure.Length;

/**
 * How much longer a page is drawn than it is, to make up for a printer that draws it shorter.
 *
 * @param across to the right, 1 for as long as it is
 * @param up likewise
 */
record Stretch(double across, double up) {

  /** True to size. */
  static final Stretch NONE = new Stretch(1, 1);

  private static final Length RULE = Templates.CHECK_RULE;

  /** A tenth: no printer that prints at 100 % is so far off. */
  private static final Length MOST = RULE.dividedBy(10);

  /**
   * Against what the check rule measured on paper, across and up, or both alike.
   *
   * @throws ExportException when a length is more than a tenth off
   */
  static Stretch against(List<Length> measured) throws ExportException {
    return new Stretch(factor(measured.get(0)), factor(measured.get(measured.size() - 1)));
  }

  private static double factor(Length measured) throws ExportException {
    if (measured.minus(RULE).abs().isMoreThan(MOST)) {
      throw new ExportException(
          "printed-length is what the check rule of "
              + RULE
              + " measured on paper, from "
              + RULE.minus(MOST)
              + " to "
              + RULE.plus(MOST)
              + ", not "
              + measured
              + ": print the templates at 100 %, without fit to page, and measure again");
    }
    return RULE.inMm() / measured.inMm();
  }
}
