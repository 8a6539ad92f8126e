package org.slatwright.api.drawing;

import org.slatwright.api.measure.Length;

/** Paper sizes: ISO 216 for A4 and A3, ASME Y14.1 A and B for letter and tabloid. */
public enum Paper {
  A4("A4", Length.mm(210), Length.mm(297)),
  A3("A3", Length.mm(297), Length.mm(420)),
  LETTER("letter", Length.inches(17, 2), Length.inches(11, 1)),
  TABLOID("tabloid", Length.inches(11, 1), Length.inches(17, 1));

  private final String word;
  private final Length shortSide;
  private final Length longSide;

  Paper(String word, Length shortSide, Length longSide) {
    this.word = word;
    this.shortSide = shortSide;
    this.longSide = longSide;
  }

  /** As written in a rack file. */
  public String word() {
    return word;
  }

  /** The shorter side. */
  public Length shortSide() {
    return shortSide;
  }

  /** The longer side. */
  public Length longSide() {
    return longSide;
  }
}
