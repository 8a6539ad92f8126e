package org.slatwright.exporter.html;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Wording;

/**
 * Measures as the page carries them: exact, and spelt in millimetres and in inches by the api's own
 * rules, so that a switch of units shows the one or the other and no script spells a number.
 */
final class Measures {

  private static final LengthFormat MILLIMETRES = new LengthFormat(Unit.MM);
  private static final LengthFormat INCHES = new LengthFormat(Unit.INCH);

  private Measures() {}

  /** {@code 1500 mm}, {@code 59 1/16"}. */
  static Node length(Length length) {
    return exact(length, format -> format.withUnit(length));
  }

  /** {@code 1500}, {@code 59 1/16}, where the unit stands elsewhere. */
  static Node number(Length length) {
    return exact(length, format -> format.number(length));
  }

  /** {@code 44 × 70}, where the unit stands elsewhere. */
  static Node numbers(Length first, Length second) {
    return Element.of("span", number(first), Node.text(" × "), number(second));
  }

  /** To the nearest whole millimetre or eighth of an inch, {@link LengthFormat#rounded}. */
  static Node rounded(Length length) {
    return inEither(unit -> about(new LengthFormat(unit), length));
  }

  /** What the numbers in a column are in. */
  static Node unit() {
    return inEither(Unit::symbol);
  }

  /** A sentence, each of its lengths in its place. */
  static List<Node> wording(Wording wording) {
    List<Node> said = new ArrayList<>();
    String[] words = wording.words().split("\\{}", -1);
    for (int i = 0; i < words.length; i++) {
      if (i > 0) {
        said.add(length(wording.lengths().get(i - 1)));
      }
      said.add(Node.text(words[i]));
    }
    return said;
  }

  /** Whatever depends on the unit that is shown. */
  static Node inEither(Function<Unit, String> said) {
    String metric = said.apply(Unit.MM);
    String inch = said.apply(Unit.INCH);
    return metric.equals(inch)
        ? Node.text(metric)
        : Element.of("span", only(Unit.MM, Node.text(metric)), only(Unit.INCH, Node.text(inch)));
  }

  /** What is shown while the page is in {@code unit}. */
  static Element only(Unit unit, Node... said) {
    return Element.of("span", said).styled("in-" + unit.symbol());
  }

  /** Money, as the rack file has it: in no currency that is known. */
  static Node money(BigDecimal amount) {
    return Node.text(amount.toPlainString());
  }

  private static Node exact(Length length, Function<LengthFormat, String> spelt) {
    return Element.of(
            "data",
            only(Unit.MM, Node.text(spelt.apply(MILLIMETRES))),
            only(Unit.INCH, Node.text(spelt.apply(INCHES))))
        .with("value", MILLIMETRES.number(length));
  }

  private static String about(LengthFormat format, Length length) {
    return format.withUnit(format.rounded(length));
  }
}
