package org.slatwright.exporter.svg;

/**
 * Has a browser print a drawing true to size.
 *
 * <p>Without a size of the page it would fit the drawing to one with margins. And it stretches the
 * outermost element to whole pixels, A4 by up to 0.1 mm and A3 by 0.13: so that is made whole
 * beforehand, and what it holds is scaled back.
 *
 * @param widthMm of the drawing
 * @param heightMm of the drawing
 */
record PrintRule(double widthMm, double heightMm) {

  /** The value of {@code preserveAspectRatio} that goes with it: the upper left corner stays. */
  static final String KEPT_CORNER = "xMinYMin";

  /** CSS Values and Units 3, 6.2: a pixel is 1/96 in. */
  private static final double PIXELS_PER_MM = 96 / 25.4;

  /** Against a whole number of pixels that comes out less by a rounding. */
  private static final double SLACK = 1e-6;

  private static final double DECIMALS = 1e9;

  /**
   * As CSS.
   *
   * @param width of the drawing in mm, as its document spells it
   * @param height likewise
   */
  String css(String width, String height) {
    String page = "@page{size:" + width + "mm " + height + "mm;margin:0}\n";
    String whole = "width:" + pixels(widthMm) + "px;height:" + pixels(heightMm) + "px";
    String back = "transform:scale(" + scale() + ")";
    return page + "@media print{:root{" + whole + "}.view{" + back + "}}\n";
  }

  /** None beyond the page, which would have a second one printed. */
  private static long pixels(double mm) {
    return (long) (mm * PIXELS_PER_MM + SLACK);
  }

  private double scale() {
    double shown = Math.min(pixels(widthMm) / widthMm, pixels(heightMm) / heightMm);
    return Math.round(PIXELS_PER_MM / shown * DECIMALS) / DECIMALS;
  }
}
