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

  /**
   * As given, or one that leaves enough wood around it.
   *
   * @param ends of the upright beyond the rails, the shorter of them; empty where it is not known
   */
  static Optional<DowelPattern> choose(
      Worksheet sheet, Section upright, Section rail, Optional<Length> ends) {
    Rules rules = new Rules(sheet, upright, rail, ends);
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
          "no usual dowel is thin enough for this stock (at most %s): give %s"
              .formatted(rules.thickestInWords(), KEY),
          rules.oneDowelOrThinner());
    }
    sheet.note(
        KEY,
        "dowels of %s: the thickest usual size that leaves enough wood around it"
            .formatted(sheet.show(size.get())),
        "give " + KEY + " if yours are others");
    return size.map(rules::pattern);
  }

  /**
   * What the stock allows. What is chosen leaves three diameters between centres and one and a half
   * from centre to edge (common practice, no source), and three from end to centre where a usual
   * dowel can.
   */
  private record Rules(Worksheet sheet, Section upright, Section rail, Optional<Length> ends) {

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

    /** Centres as far from the underside of the rail as from its top. */
    DowelPattern pattern(Length diameter) {
      if (dowels() == 1) {
        return new DowelPattern(diameter, List.of(rail.second().half()));
      }
      Length lower = lowest(diameter, dowels());
      return new DowelPattern(diameter, List.of(lower, lower.plus(spacing(diameter))));
    }

    boolean fits(Length diameter, int count) {
      return count == 1
          || spacing(diameter).isMoreThan(diameter.plus(wallBetween()))
              && !lowest(diameter, count).isLessThan(diameter);
    }

    Optional<Length> thickestTradeSize(int count) {
      Stream<Length> roomiest = roomy(count).filter(size -> reachesNoEnd(size, count));
      return Stream.concat(roomiest, roomy(count)).findFirst();
    }

    String thickestInWords() {
      return dowels() > 1 && rail.second().isLessThan(thinnest().times(2))
          ? "a sixth of the height of the rail, " + sheet.show(rail.second())
          : "a third of " + sheet.show(thinnest());
    }

    /** Usual sizes, thickest first. */
    private Stream<Length> roomy(int count) {
      return DowelSizes.ofTheTrade(sheet.file().units()).stream()
          .filter(size -> !size.times(3).isMoreThan(thinnest()))
          .filter(size -> !size.times(3 * count).isMoreThan(rail.second()));
    }

    private boolean reachesNoEnd(Length diameter, int count) {
      return ends.filter(end -> end.plus(lowest(diameter, count)).isLessThan(diameter.times(3)))
          .isEmpty();
    }

    /** From the underside of the rail to the centre of its lowest dowel. */
    private Length lowest(Length diameter, int count) {
      return count == 1 ? rail.second().half() : rail.second().minus(spacing(diameter)).half();
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

    private Length spacing(Length diameter) {
      return DowelSizes.spacing(rail.second(), diameter, sheet.increment());
    }
  }
}
