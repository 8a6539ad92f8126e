package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/** The solid that a part is before any hole is drilled, lying along the axes of the part. */
public sealed interface Shape {

  /** Along the first axis; the grain runs along it. */
  Length length();

  /** Along the second axis. */
  Length width();

  /** Along the third axis. */
  Length thickness();

  /** A straight piece of rectangular stock. */
  record Bar(Length length, Length width, Length thickness) implements Shape {}

  /** A straight round piece; its axis runs along the middle of its box. */
  record Rod(Length length, Length diameter) implements Shape {
    @Override
    public Length width() {
      return diameter;
    }

    @Override
    public Length thickness() {
      return diameter;
    }
  }
}
