package org.slatwright.design.sizing;

import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;

/**
 * Spells lengths as {@code --set} reads them back to the nanometre: without spaces, so that a shell
 * takes each as one word, and in millimetres where the file's inches cannot say it.
 *
 * @param unit of the rack file
 */
public record Spelling(Unit unit) {

  private static final LengthFormat MILLIMETRES = new LengthFormat(Unit.MM);

  /** {@code 44}, {@code 1-3/4}, {@code 37.6mm}. */
  public String length(Length length) {
    LengthFormat format = new LengthFormat(unit);
    return format.isExact(length)
        ? format.number(length).replace(' ', '-')
        : MILLIMETRES.number(length) + "mm";
  }

  /** Two lengths of a range or a section, both in the same unit: {@code 18x95}. */
  public String pair(Length first, String between, Length second) {
    LengthFormat format = new LengthFormat(unit);
    boolean exact = format.isExact(first) && format.isExact(second);
    return exact
        ? length(first) + between + length(second)
        : MILLIMETRES.number(first) + "mm" + between + MILLIMETRES.number(second) + "mm";
  }
}
