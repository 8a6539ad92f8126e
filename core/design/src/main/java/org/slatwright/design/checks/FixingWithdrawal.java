package org.slatwright.design.checks;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.Rack;

/**
 * Whether brads and screws are drawn out of the rails: {@code 54.12·G^2.5·D·L} of a brad, {@code
 * 108.25·G²·D·L} of a screw (Wood Handbook, eq. 8-1 and 8-10), of which a sixth is used, and 1.6
 * times as much where it is pulled for a moment only.
 *
 * <p>Two cases of our own: someone lifts the empty rack by two rows of slats of the top shelf, and
 * one thing as heavy as all that may stand in a bay rests on the ends of two slats beyond the
 * frames, so that each turns over the outer face of its rail and pulls at its next bearing: {@code
 * W·(a/2)/L}. What the slat weighs helps, and is left out.
 */
final class FixingWithdrawal implements FixingLimit {

  private static final String NAME = "fixing-withdrawal";
  private static final int TWO_HANDS = 2;

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    Stream<Finding> lifting = Stream.of(lifting(design, others));
    return design.rack().slats().overhang().isZero()
        ? lifting
        : Stream.concat(lifting, Stream.of(prising(design)));
  }

  private static Finding lifting(Design design, UnaryOperator<String> others) {
    FixingCase fixing = new FixingCase(design.rack());
    Reckoned pull = fixing.shortPull(lift(design));
    return finding(
        fixing,
        pull,
        fixing.plural() + " when lifted",
        "pull on each when the empty rack is lifted by two slats of the top shelf",
        () -> others.apply("lift it by the frames, never by slats"));
  }

  /** N on each of them. */
  private static double lift(Design design) {
    Rack rack = design.rack();
    int rows = Math.min(TWO_HANDS, fewestOnTop(rack));
    int bearings = rack.slats().lengths().size() == 1 ? rack.frames() : 2 * rack.bays();
    double weight = design.quantities().mass().kg() * Tipping.GRAVITY;
    return weight / (rows * bearings * rack.fixing().perEnd());
  }

  private static int fewestOnTop(Rack rack) {
    return rack.rows().stream()
        .filter(row -> row.shelf() == rack.shelves() - 1)
        .mapToInt(row -> row.slats().size())
        .min()
        .orElseThrow();
  }

  private static Finding prising(Design design) {
    FixingCase fixing = new FixingCase(design.rack());
    SlatCase slat = SlatCase.of(design.rack());
    Function<SlatCase, Reckoned> rule = each -> fixing.pull(prise(each));
    Reckoned pull = rule.apply(slat);
    Remedies remedies = new Remedies(design.rack());
    return finding(
        fixing,
        pull,
        SlatAdvice.OVERHANG,
        "pull on each of the %s at the next bearing with %s as one thing on two slat ends"
            .formatted(fixing.plural(), new Figures(design.rack().lengths()).mass(slat.bayMass())),
        () ->
            Remedies.anyOf(
                List.of(
                    remedies.overhang(size -> rule.apply(slat.withOverhang(size)).holds()),
                    remedies.load(load -> rule.apply(slat.withLoad(load)).holds()))));
  }

  /** N on each of them. */
  private static double prise(SlatCase slat) {
    return slat.overhang().isZero()
        ? 0
        : slat.oneThing() * (slat.reach() / 2) / slat.span() / slat.rack().fixing().perEnd();
  }

  private static Finding finding(
      FixingCase fixing, Reckoned pull, String subject, String message, Supplier<String> advice) {
    return pull.finding(
        NAME,
        subject,
        message,
        new Figures(fixing.rack().lengths()).force(),
        advice,
        FixingCase.SOURCE + "; the case is our own");
  }
}
