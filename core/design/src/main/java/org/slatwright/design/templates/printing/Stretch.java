package org.slatwright.design.templates.printing;

/** From one place to another along an axis, in mm. */
record Stretch(double from, double to) {

  double length() {
    return to - from;
  }
}
