package org.slatwright.design.checks;

import java.util.List;
import java.util.function.Function;

/** What to change about slats that do not hold. */
final class SlatAdvice {

  static final String SUBJECT = "slats";
  static final String OVERHANG = "slat ends";

  private SlatAdvice() {}

  /** Where it is the span that is too much for them. */
  static String ofSpan(SlatCase slat, Function<SlatCase, Reckoned> rule) {
    Remedies remedies = new Remedies(slat.rack());
    return Remedies.anyOf(
        List.of(
            remedies.slatThickness(size -> rule.apply(slat.withThickness(size)).holds()),
            remedies.interiorWidth(size -> rule.apply(slat.withInterior(size)).holds()),
            remedies.load(load -> rule.apply(slat.withLoad(load)).holds())));
  }

  /** Where it is the overhang. */
  static String ofOverhang(SlatCase slat, Function<SlatCase, Reckoned> rule) {
    Remedies remedies = new Remedies(slat.rack());
    return Remedies.anyOf(
        List.of(
            remedies.overhang(size -> rule.apply(slat.withOverhang(size)).holds()),
            remedies.slatThickness(size -> rule.apply(slat.withThickness(size)).holds()),
            remedies.load(load -> rule.apply(slat.withLoad(load)).holds())));
  }
}
