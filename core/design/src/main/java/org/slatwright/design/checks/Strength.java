package org.slatwright.design.checks;

import org.slatwright.design.wood.Climate;
import org.slatwright.design.wood.Timber;

/**
 * Stress against the strength of the wood, EN 1995-1-1, 6.1.6 and 6.1.7: under the load as it is,
 * stress stays below f_d / γ_Q, with f_d = k_mod·f_k / γ_M for a load that stays.
 *
 * <p>Above that it is a warning: too little is left for a load that is heavier than stated. Under
 * the load that the maker states it is an error above f_d: too little is left for knots and years.
 * Under a load that we think of it is one above f_k only, where one piece in twenty breaks in
 * minutes. The factor k_h of EN 1995-1-1, 3.2, which raises the strength of thin stock by up to
 * 1.3, is left out, since the strength class of stock that nobody graded is a guess.
 */
final class Strength {

  static final String SOURCE = "EN 1995-1-1, 6.1.6; EN 338; EN 1990, table A1.2";

  /** γ_Q of a load that varies: EN 1990, table A1.2(B), from memory. */
  static final double LOAD_FACTOR = 1.5;

  /** k_cr, the share of the breadth that has not split: EN 1995-1-1, 6.1.7, from memory. */
  private static final double UNSPLIT = 0.67;

  private Strength() {}

  /** Of bending stress under the load that the maker states. */
  static Reckoned bending(double stress, Timber timber, Climate climate) {
    double design = timber.bending(climate);
    return new Reckoned(stress, design / LOAD_FACTOR, design);
  }

  /** Of bending stress under a load that the maker does not state. */
  static Reckoned bendingUnstated(double stress, Timber timber, Climate climate) {
    double most = timber.bending(climate) / LOAD_FACTOR;
    return new Reckoned(stress, most, timber.grade().bending());
  }

  /** Of shear stress under the load that the maker states, in wood that has split somewhere. */
  static Reckoned shear(double stress, Timber timber, Climate climate) {
    double design = timber.shear(climate) * UNSPLIT;
    return new Reckoned(stress, design / LOAD_FACTOR, design);
  }

  /** What wood pressed across its grain may bear for a short while, MPa. */
  static double pressedAtAPush(Timber timber, Climate climate) {
    return timber.crushingAtAPush(climate) / LOAD_FACTOR;
  }
}
