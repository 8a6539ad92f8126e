package org.slatwright.api.model;

/** What a part does in the rack. */
public enum Role {
  UPRIGHT("upright"),
  RAIL("rail"),
  SLAT("slat"),
  DOWEL("dowel");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** Its name at the bench. */
  public String word() {
    return word;
  }
}
