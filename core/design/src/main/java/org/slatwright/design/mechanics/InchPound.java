package org.slatwright.design.mechanics;

/** The inch-pound units in those that everything is reckoned in; both exact. */
public final class InchPound {

  /** The international inch, mm. */
  public static final double MM_PER_INCH = 25.4;

  /** The pound of 1959 under standard gravity, N. */
  public static final double N_PER_LBF = 4.4482216152605;

  private InchPound() {}
}
