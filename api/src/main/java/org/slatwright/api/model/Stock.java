package org.slatwright.api.model;

/** The kind of timber that a part is cut from. */
public enum Stock {
  FRAME("frame stock"),
  RAIL("rail stock"),
  SLAT("slat stock"),
  DOWEL_ROD("dowel rod");

  private final String word;

  Stock(String word) {
    this.word = word;
  }

  /** Its name at the bench. */
  public String word() {
    return word;
  }
}
