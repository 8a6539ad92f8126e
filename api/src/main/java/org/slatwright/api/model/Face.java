package org.slatwright.api.model;

/**
 * The six sides of a part, in the words of the bench, and where a point on each is measured from.
 *
 * <p>A point on a face has two distances. {@code along} counts from the start end (or, on an end,
 * from the face edge); {@code across} counts from the face edge (on the two wide faces) or from the
 * back (on edges and ends).
 */
public enum Face {
  /** Where the thickness is full: the side that is marked and drilled. */
  FACE_SIDE("face side"),
  /** Where the thickness is zero. */
  BACK("back"),
  /** Where the width is zero. */
  FACE_EDGE("face edge"),
  /** Where the width is full. */
  BACK_EDGE("back edge"),
  /** Where the length is zero: the foot of an upright, the front end of a rail. */
  START_END("start end"),
  /** Where the length is full. */
  FAR_END("far end");

  private final String word;

  Face(String word) {
    this.word = word;
  }

  /** Its name at the bench. */
  public String word() {
    return word;
  }

  /** Whether it is one of the two ends. */
  public boolean isEnd() {
    return this == START_END || this == FAR_END;
  }

  /** The face that {@code along} counts from. */
  public Face alongFrom() {
    return isEnd() ? FACE_EDGE : START_END;
  }

  /** The face that {@code across} counts from. */
  public Face acrossFrom() {
    return this == FACE_SIDE || this == BACK ? FACE_EDGE : BACK;
  }
}
