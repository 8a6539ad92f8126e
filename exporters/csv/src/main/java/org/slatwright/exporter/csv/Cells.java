package org.slatwright.exporter.csv;

import java.math.BigDecimal;
import java.util.function.Function;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/**
 * Fills cells.
 *
 * @param unit of every length
 * @param spelling how a length is written, in that unit and without naming it
 */
record Cells(Unit unit, Function<Length, String> spelling) {

  static Cell text(String content) {
    return new Cell.Text(content);
  }

  static Cell none() {
    return text("");
  }

  static Cell count(int count) {
    return new Cell.Number(Integer.toString(count));
  }

  static Cell yesOrNo(boolean yes) {
    return text(yes ? "yes" : "no");
  }

  /** As a plain decimal, in the currency of the rack file. */
  static Cell money(BigDecimal amount) {
    return new Cell.Number(amount.toPlainString());
  }

  Cell length(Length length) {
    return new Cell.Number(spelling.apply(length));
  }

  /** The name of a column of lengths. */
  String withUnit(String column) {
    return column + " (" + unit.symbol() + ")";
  }
}
