package org.slatwright.design.outline;

/** On which side of an outline a cutter runs. */
public enum Side {
  /** In an opening. */
  INSIDE,
  /** Around a piece. */
  OUTSIDE
}
