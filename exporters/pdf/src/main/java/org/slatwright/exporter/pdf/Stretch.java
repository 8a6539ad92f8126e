package org.slatwright.exporter.pdf;

import java.util.List;
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

  /** A tenth: no printer that prints at 100 % is so far off. */
  private static final int MOST = 10;

  /**
   * Against what the check rules measured on paper, across and up, or both alike.
   *
   * @param rule what they should have measured
   * @throws ExportException when a length is more than a tenth off
   */
  static Stretch against(Length rule, List<Length> measured) throws ExportException {
    return new Stretch(
        factor(rule, measured.get(0)), factor(rule, measured.get(measured.size() - 1)));
  }

  private static double factor(Length rule, Length measured) throws ExportException {
    Length most = rule.dividedBy(MOST);
    if (measured.minus(rule).abs().isMoreThan(most)) {
      throw new ExportException(
          "printed-length is what the check rule of "
              + rule
              + " measured on paper, from "
              + rule.minus(most)
              + " to "
              + rule.plus(most)
              + ", not "
              + measured
              + ": print the templates at 100 %, without fit to page, and measure again");
    }
    return rule.inMm() / measured.inMm();
  }
}
