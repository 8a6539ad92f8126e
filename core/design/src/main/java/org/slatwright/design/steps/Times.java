package org.slatwright.design.steps;

import org.slatwright.api.measure.Minutes;

/** How long things take one person, and what must pass before they can be used. */
final class Times {

  /** Nobody keeps finer time: work is told in steps of this many minutes. */
  static final int FINEST = 5;

  /** Labels of white and yellow PVA glues: clamped for 30 to 60 minutes; from memory. */
  static final Minutes CLAMPED = Minutes.hours(1);

  /** The same labels: no load for 24 hours after gluing; from memory. */
  static final Minutes CURED = Minutes.hours(24);

  /** Labels of oils and varnishes: dry enough to handle overnight; from memory. */
  static final Minutes DRY = Minutes.hours(16);

  /** The same labels: hard enough to carry things after a day; from memory. */
  static final Minutes HARD = Minutes.hours(24);

  /** Getting tools out, and away again. */
  static final double SET_UP = 10;

  /** Setting the stop block and trying it on a scrap. */
  static final double STOP_SETTING = 4;

  static final double CUT = 1;
  static final double RIP = 4;
  static final double MARK = 1.5;
  static final double NAILS_OF_A_BOARD = 6;
  static final double SAND_M2 = 10;
  static final double COAT_M2 = 6;
  static final double JOIN = 1.5;
  static final double CLAMP = 2;
  static final double DRILL_HOLE = 3;
  static final double DRIVE_DOWEL = 1;
  static final double FLUSH_DOWEL = 1.5;
  static final double LAY_SLAT = 2;
  static final double DRIVE_BRAD = 0.3;
  static final double DRIVE_SCREW = 1;

  private Times() {}
}
