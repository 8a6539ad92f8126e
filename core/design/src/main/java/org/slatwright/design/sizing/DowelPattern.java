package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.Section;

/**
 * How thick the dowels are and where they enter the end of a rail.
 *
 * @param heights of the centres above the underside of the rail, lowest first
 */
record DowelPattern(Length diameter, List<Length> heights) {

  private static final String KEY = "timber.dowel.diameter";

  DowelPattern {
    heights = List.copyOf(heights);
  }

  static Optional<DowelPattern> choose(Worksheet sheet, Section upright, Section rail) {
    Rules rules = new Rules(sheet, upright, rail);
    return sheet
        .file()
        .timber()
        .dowel()
        .diameter()
        .map(given -> checked(sheet, rules, given))
        .orElseGet(() -> chosen(sheet, rules));
  }

  private static Optional<DowelPattern> checked(
      Worksheet sheet, Rules rules, Given<Length> diameter) {
    Length thinnest = rules.thinnestAcross();
    if (!diameter.value().isLessThan(thinnest)) {
      return sheet.complain(
          diameter.place(),
          "a dowel of %s is not thinner than the stock it joins, %s"
              .formatted(sheet.show(diameter.value()), sheet.show(thinnest)),
          rules.thinnerDowel());
    }
    if (!rules.fits(diameter.value(), rules.dowels())) {
      return sheet.complain(
          sheet.file().joint().dowels().place(),
          "two dowels of %s do not fit a rail %s high: they need more than %s between their centres"
                  .formatted(
                      sheet.show(diameter.value()),
                      sheet.show(rules.rail().second()),
                      sheet.show(diameter.value().plus(rules.wallBetween())))
              + " and half a diameter of wood above and below",
          rules.oneDowelOrThinner());
    }
    return Optional.of(rules.pattern(diameter.value()));
  }

  private static Optional<DowelPattern> chosen(Worksheet sheet, Rules rules) {
    Optional<Length> size = rules.thickestTradeSize(rules.dowels());
    if (size.isEmpty()) {
      return sheet.complain(
          sheet.place("timber.dowel"),
          "no usual dowel is thin enough for this stock (at most half of %s): give %s"
              .formatted(sheet.show(rules.thinnest()), KEY),
          rules.oneDowelOrThinner());
    }
    sheet.note(
        KEY,
        "dowels of %s: the thickest usual size that is not more than half of the stock"
            .formatted(sheet.show(size.get())),
        "give " + KEY + " if yours are others");
    return size.map(rules::pattern);
  }

  /** What the stock allows. */
  private record Rules(Worksheet sheet, Section upright, Section rail) {

    int dowels() {
      return sheet.file().joint().dowels().value();
    }

    /** The least size of the stock that a dowel passes through or lies in. */
    Length thinnest() {
      return Length.min(thinnestAcross(), upright.second());
    }

    Length thinnestAcross() {
      return Length.min(upright.first(), Length.min(rail.first(), rail.second()));
    }

    Length wallBetween() {
      return sheet.metricOrInch(Length.mm(3), Length.inches(1, 8));
    }

    /** Centres on the quarter points, their distance snapped and the middle kept. */
    DowelPattern pattern(Length diameter) {
      if (dowels() == 1) {
        return new DowelPattern(diameter, List.of(rail.second().half()));
      }
      Length lower = rail.second().minus(spacing()).half();
      return new DowelPattern(diameter, List.of(lower, lower.plus(spacing())));
    }

    boolean fits(Length diameter, int count) {
      return count == 1
          || spacing().isMoreThan(diameter.plus(wallBetween()))
              && !rail.second().minus(spacing()).half().isLessThan(diameter);
    }

    /** Not more than half the stock: woodworking practice (WOOD magazine, dowel joinery). */
    Optional<Length> thickestTradeSize(int count) {
      return DowelSizes.ofTheTrade(sheet.file().units()).stream()
          .filter(size -> !size.isMoreThan(thinnest().half()) && fits(size, count))
          .findFirst();
    }

    List<Problem.Change> thinnerDowel() {
      return thickestTradeSize(dowels()).stream()
          .map(size -> sheet.change(KEY, size, "dowels of " + sheet.show(size)))
          .toList();
    }

    List<Problem.Change> oneDowelOrThinner() {
      boolean oneFits =
          dowels() > 1
              && (sheet.file().timber().dowel().diameter().isPresent()
                  || thickestTradeSize(1).isPresent());
      List<Problem.Change> one =
          oneFits
              ? List.of(new Problem.Change("joint.dowels=1", "one dowel at each rail end"))
              : List.of();
      return Stream.concat(one.stream(), thinnerDowel().stream()).toList();
    }

    private Length spacing() {
      return DowelSizes.spacing(rail.second(), sheet.increment());
    }
  }
}
