package org.slatwright.api.drawing;

/**
 * The scale of a drawing.
 *
 * @param paper length on paper, at least 1
 * @param real length in life, at least 1
 */
public record Scale(int paper, int real) {

  public Scale {
    if (paper < 1 || real < 1) {
      throw new IllegalArgumentException("a scale's sides are >= 1, were " + paper + ":" + real);
    }
  }

  /** Millimetres on paper for one in life. */
  public double factor() {
    return paper / (double) real;
  }

  /** As written in a title block: {@code 1:10}. */
  @Override
  public String toString() {
    return paper + ":" + real;
  }
}
