package org.slatwright.api.model;

/** Which way the fibres of a part run. */
public enum Grain {
  /** Along the first axis, as in every sawn piece. */
  ALONG_LENGTH,
  /** Along the second axis. */
  ALONG_WIDTH,
  /** Crossed plies or none: sheet material. */
  NONE
}
