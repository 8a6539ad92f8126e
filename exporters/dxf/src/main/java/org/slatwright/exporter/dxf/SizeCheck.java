package org.slatwright.exporter.dxf;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Point2;

/**
 * A line of known length above the piece, never cut. A wrong unit on import, a factor of 25.4, is
 * the commonest mishap with these files, and measuring this line shows it before the first cut.
 */
final class SizeCheck {

  private static final Length CLEAR = Length.mm(10);
  private static final Length LETTERS = Length.mm(4);
  private static final Length LETTERS_ABOVE = Length.mm(3);

  private final Unit unit;

  SizeCheck(Unit unit) {
    this.unit = unit;
  }

  /** The line and, above it, what it says. */
  List<Entity> above(Extent piece) {
    Point2 start = new Point2(piece.low().x(), piece.high().y().plus(CLEAR));
    return List.of(
        new Entity.Line(Layer.REFERENCE, start, start.moved(length(), Length.ZERO)),
        lettering(start, "unit " + unit.symbol() + ", this line is " + stated()));
  }

  /** The length of the line: a hand's width that every rule in the shop can measure. */
  private Length length() {
    return unit == Unit.MM ? Length.mm(100) : Length.inches(4, 1);
  }

  private String stated() {
    return new LengthFormat(unit).number(length()) + " " + unit.symbol();
  }

  private static Entity lettering(Point2 start, String text) {
    Point2 at = start.moved(Length.ZERO, LETTERS_ABOVE);
    return new Entity.Lettering(Layer.REFERENCE, at, LETTERS, text);
  }
}
