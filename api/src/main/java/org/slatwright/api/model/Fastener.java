package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * A brad or screw in its place.
 *
 * @param kind brad or screw
 * @param length overall
 * @param diameter of the shank
 * @param head the centre of its head, in rack coordinates
 * @param inward the way it is driven
 * @param through the piece that it holds down
 * @param into the piece that it holds in
 */
public record Fastener(
    Kind kind,
    Length length,
    Length diameter,
    Point3 head,
    Direction inward,
    Piece through,
    Piece into) {

  /** What it is. */
  public enum Kind {
    BRAD("brad"),
    SCREW("screw");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Its name at the bench. */
    public String word() {
      return word;
    }
  }
}
