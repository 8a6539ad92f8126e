package org.slatwright.exporter.pdf;

import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;

/**
 * From millimetres on the paper to a page's points, which both run right and up from the lower left
 * corner. A page is stretched about its middle.
 *
 * <p>Every place is reckoned here rather than by a matrix on the page, which PDFBox would round to
 * four decimals: 0.007 mm over the long side of A3. A place so rounded is 0.00002 mm off.
 *
 * @param widthMm of the paper
 * @param heightMm of the paper
 * @param stretch of what is drawn on it
 */
record PageFrame(double widthMm, double heightMm, Stretch stretch) {

  /** ISO 32000-1, 8.3.2.3: a point is 1/72 in. */
  private static final double POINTS_PER_MM = 72 / 25.4;

  static PageFrame of(Sheet sheet, Stretch stretch) {
    return new PageFrame(sheet.widthMm(), sheet.heightMm(), stretch);
  }

  /** The paper. */
  PDRectangle paper() {
    return new PDRectangle(points(widthMm), points(heightMm));
  }

  /** A length that is not stretched: of a pen, of a dash. */
  float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  float x(PaperPoint point) {
    return points(widthMm / 2 + (point.x() - widthMm / 2) * stretch.across());
  }

  float y(PaperPoint point) {
    return points(heightMm / 2 + (point.y() - heightMm / 2) * stretch.up());
  }
}
