package org.slatwright.api.model;

/** The three axes of a right-handed system. */
public enum Axis {
  X,
  Y,
  Z
}
