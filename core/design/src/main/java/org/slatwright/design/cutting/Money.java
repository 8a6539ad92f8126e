package org.slatwright.design.cutting;

import java.math.BigDecimal;

/** Sums in the currency of the rack file. */
final class Money {

  private static final int USUAL_DECIMALS = 2;

  private Money() {}

  /** With two decimals, or more where they say something. */
  static String shown(BigDecimal sum) {
    return settled(sum).toPlainString();
  }

  /** The same sum with two decimals, or more where they say something. */
  static BigDecimal settled(BigDecimal sum) {
    BigDecimal least = sum.stripTrailingZeros();
    return least.setScale(Math.max(USUAL_DECIMALS, least.scale()));
  }
}
