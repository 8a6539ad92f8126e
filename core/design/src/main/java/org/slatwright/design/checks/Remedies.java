package org.slatwright.design.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiPredicate;
import java.util.function.LongPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.design.sizing.PlanedSizes;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/**
 * Changes of one key, each of which makes a rule hold: the nearest size that does, a multiple of
 * the increment. Each asks whether the rule holds with a size of that key, which must go from no to
 * yes, or from yes to no, but once.
 */
record Remedies(Rack rack) {

  /** As many as a rack file may have. */
  private static final int MOST_BAYS = 50;

  /** Any one of the changes that there are. */
  static String anyOf(List<Optional<String>> changes) {
    List<String> there = changes.stream().flatMap(Optional::stream).toList();
    return there.isEmpty() ? "" : "set " + String.join(", or ", there);
  }

  /** Any one of the changes that there are, or what no setting says. */
  static String anyOf(List<Optional<String>> changes, Optional<String> words) {
    return Stream.concat(
            Stream.of(anyOf(changes)).filter(settings -> !settings.isEmpty()), words.stream())
        .collect(Collectors.joining(", or "));
  }

  /**
   * The least thickness of the slats that is sold; none where they would be more than twice as
   * thick.
   */
  Optional<Length> slatThickness(Predicate<Length> holds) {
    Length thinnest = rack.slats().thinnest();
    return PlanedSizes.thicknesses(rack.units()).stream()
        .filter(size -> size.isMoreThan(thinnest) && !size.isMoreThan(thinnest.times(2)))
        .filter(holds)
        .findFirst();
  }

  /** Slats so thick; none where they come from reclaimed boards, which are as they are. */
  Optional<String> slatSection(Length thickness) {
    return rack.reclaimed()
        ? Optional.empty()
        : Optional.of(
            "timber.slats.section=" + spelling().pair(thickness, "x", rack.slats().width()));
  }

  /** In words, where slats come from reclaimed boards. */
  Optional<String> thickerBoards(Length thickness) {
    return rack.reclaimed()
        ? Optional.of("take boards at least " + shown(thickness) + " thick")
        : Optional.empty();
  }

  /** The least height of the rails; none where they would be twice as high. */
  Optional<String> railHeight(Predicate<Length> holds) {
    Rack.Rail rail = rack.rail();
    return least(rail.height(), holds)
        .map(least -> "timber.rails.section=" + spelling().pair(rail.width(), "x", least));
  }

  /**
   * The greatest width of a bay; none where it would be less than half as wide, or where things
   * that the rack must hold have their say in its sizes.
   */
  Optional<String> interiorWidth(Predicate<Length> holds) {
    if (!rack.fits().isEmpty()) {
      return Optional.empty();
    }
    return greatest(rack.interiorWidth().half(), rack.interiorWidth(), holds)
        .map(most -> "rack.interior-width=" + spelling().length(most));
  }

  /**
   * The fewest bays, a frame between any two, in the width that there is; none where things that
   * the rack must hold have their say in its sizes.
   *
   * @param holds with so many bays, so wide
   */
  Optional<String> moreBays(BiPredicate<Integer, Length> holds) {
    if (!rack.fits().isEmpty()) {
      return Optional.empty();
    }
    return IntStream.rangeClosed(rack.bays() + 1, MOST_BAYS)
        .filter(bays -> narrowed(bays).isPositive() && holds.test(bays, narrowed(bays)))
        .mapToObj(
            bays ->
                "rack.bays=%s with rack.interior-width=%s"
                    .formatted(bays, spelling().length(narrowed(bays))))
        .findFirst();
  }

  private Length narrowed(int bays) {
    Length upright = rack.upright().width();
    Length all = rack.interiorWidth().plus(upright).times(rack.bays());
    return all.dividedBy(bays).minus(upright).snappedDown(rack.increment());
  }

  /** In words, where the things that the rack must hold ask for the width. */
  Optional<String> fewerAcross(Predicate<Length> holds) {
    if (rack.fits().isEmpty()) {
      return Optional.empty();
    }
    return greatest(Length.ZERO, rack.interiorWidth(), holds)
        .map(
            most ->
                "hold fewer things across, so that frames stand no more than %s apart"
                    .formatted(shown(most)));
  }

  /** The greatest overhang of the slats, or none at all. */
  Optional<String> overhang(Predicate<Length> holds) {
    Length most = greatest(Length.ZERO, rack.slats().overhang(), holds).orElse(Length.ZERO);
    return Optional.of("slats.overhang=" + spelling().length(most));
  }

  /** The greatest load of a shelf, in tenths of a kilogram or of a pound. */
  Optional<String> load(Predicate<Mass> holds) {
    OptionalLong tooMuch = first(1, tenths(rack.load()), tenth -> !holds.test(mass(tenth)));
    long most = tooMuch.orElse(tenths(rack.load()) + 1) - 1;
    return most > 0 ? Optional.of("load.per-shelf=" + spelled(most)) : Optional.empty();
  }

  private Optional<Length> least(Length above, Predicate<Length> holds) {
    Length step = rack.increment();
    OptionalLong least =
        first(
            above.wholeTimes(step) + 1,
            above.times(2).wholeTimes(step),
            times -> holds.test(step.times(times)));
    return least.isPresent() ? Optional.of(step.times(least.getAsLong())) : Optional.empty();
  }

  private Optional<Length> greatest(Length above, Length most, Predicate<Length> holds) {
    Length step = rack.increment();
    long from = above.wholeTimes(step) + 1;
    long to = most.wholeTimes(step);
    long over = first(from, to, times -> !holds.test(step.times(times))).orElse(to + 1);
    return over > from ? Optional.of(step.times(over - 1)) : Optional.empty();
  }

  private Mass mass(long tenths) {
    BigDecimal grams = BigDecimal.valueOf(tenths, 1).multiply(gramsPerUnit());
    return new Mass(grams.setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  private long tenths(Mass mass) {
    return BigDecimal.valueOf(mass.grams())
        .multiply(BigDecimal.TEN)
        .divide(gramsPerUnit(), 0, RoundingMode.DOWN)
        .longValueExact();
  }

  private String spelled(long tenths) {
    String number = BigDecimal.valueOf(tenths, 1).stripTrailingZeros().toPlainString();
    return number + rack.units().metricOrInch("kg", "lb");
  }

  private BigDecimal gramsPerUnit() {
    return Mass.gramsEach(rack.units());
  }

  private String shown(Length length) {
    return rack.lengths().withUnit(length);
  }

  private Spelling spelling() {
    return new Spelling(rack.units());
  }

  /** The first number from one to another for which it is true, as it then is for all above. */
  private static OptionalLong first(long from, long to, LongPredicate isTrue) {
    if (from > to || !isTrue.test(to)) {
      return OptionalLong.empty();
    }
    long low = from;
    long high = to;
    while (low < high) {
      long middle = low + (high - low) / 2;
      if (isTrue.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return OptionalLong.of(low);
  }
}
