package org.slatwright.api.drawing;

/** A place on the paper, in mm: x to the right, y up from the lower left corner. */
public record PaperPoint(double x, double y) {

  public PaperPoint {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a place on paper is finite, was " + x + ", " + y);
    }
  }

  /** This place moved right by {@code dx} and up by {@code dy}, in mm. */
  public PaperPoint moved(double dx, double dy) {
    return new PaperPoint(x + dx, y + dy);
  }
}
