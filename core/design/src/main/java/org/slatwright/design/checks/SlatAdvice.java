package org.slatwright.design.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.slatwright.api.measure.Length;

/** What to change about slats that do not hold. */
final class SlatAdvice {

  static final String SUBJECT = "slats";
  static final String OVERHANG = "slat ends";

  private SlatAdvice() {}

  /** Where it is the span that is too much for them. */
  static String ofSpan(SlatCase slat, Function<SlatCase, Reckoned> rule) {
    Remedies remedies = new Remedies(slat.rack());
    Optional<Length> thickness = thickness(slat, rule);
    return Remedies.anyOf(
        List.of(
            thickness.flatMap(remedies::slatSection),
            thickness.isPresent()
                ? Optional.empty()
                : remedies.moreBays((bays, size) -> rule.apply(slat.withBays(bays, size)).holds()),
            remedies.interiorWidth(size -> rule.apply(slat.withInterior(size)).holds()),
            remedies.load(load -> rule.apply(slat.withLoad(load)).holds())),
        thickness
            .flatMap(remedies::thickerBoards)
            .or(() -> remedies.fewerAcross(size -> rule.apply(slat.withInterior(size)).holds())));
  }

  /** Where it is the overhang. */
  static String ofOverhang(SlatCase slat, Function<SlatCase, Reckoned> rule) {
    Remedies remedies = new Remedies(slat.rack());
    Optional<Length> thickness = thickness(slat, rule);
    return Remedies.anyOf(
        List.of(
            remedies.overhang(size -> rule.apply(slat.withOverhang(size)).holds()),
            thickness.flatMap(remedies::slatSection),
            remedies.load(load -> rule.apply(slat.withLoad(load)).holds())),
        thickness.flatMap(remedies::thickerBoards));
  }

  private static Optional<Length> thickness(SlatCase slat, Function<SlatCase, Reckoned> rule) {
    return new Remedies(slat.rack())
        .slatThickness(size -> rule.apply(slat.withThickness(size)).holds());
  }
}
