package org.slatwright.design.templates;

import org.slatwright.api.measure.LengthFormat;

/** What holds for the use of several templates. */
final class Advice {

  static final String CHECK =
      "Before use, lay your own rule on the check rule of every page, both ways; where they differ,"
          + " print again at 100 %, never fitted to the page.";

  /** Common practice, no source: paper moves by some tenths of a percent with damp. */
  static final String SAME_DAY =
      "Print all its pages on one day and use them that day, since paper grows and shrinks with"
          + " damp; where paper and rule differ, the printed number counts.";

  static final String PRICK =
      "Prick each centre with an awl where the lines of its cross meet, straight down, your other"
          + " hand out of its way; take the paper off and measure the pricks against the numbers.";

  /**
   * Sources: 29 CFR 1910.133 for the eyes, 29 CFR 1910.213 and common practice for the rest; from
   * memory.
   */
  static final String DRILLING =
      "When drilling, wear eye protection, clamp the work, keep both hands behind the bit, and wear"
          + " no gloves or loose sleeves at a turning drill.";

  /** Sources as for {@link #DRILLING}. */
  static final String SAWING =
      "When sawing and drilling sheet, wear eye protection and a dust mask, clamp the work, and keep"
          + " hands out of the line of the blade.";

  private Advice() {}

  /** What the numbers of a template are in. */
  static String units(LengthFormat lengths) {
    return lengths.unit().metricOrInch("mm", "inches");
  }
}
