package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Run;

/**
 * Along the slats, from the left.
 *
 * @param between two frames
 * @param upright width of an upright, across its frame
 * @param rail width of a rail, which is what slats bear on
 * @param overhang slat ends beyond the outer faces of the frames
 */
record WidthChain(Run run, int bays, Sized between, Length upright, Length rail, Length overhang) {

  /**
   * The width, where it is known and slats lie safely.
   *
   * @param slatWidth empty where that has a problem of its own
   */
  static Optional<WidthChain> close(
      Worksheet sheet, Things things, Length rail, Optional<Length> slatWidth) {
    return between(sheet, things).flatMap(width -> close(sheet, width, rail, slatWidth));
  }

  private static Optional<WidthChain> close(
      Worksheet sheet, Sized between, Length rail, Optional<Length> slatWidth) {
    WidthChain width =
        new WidthChain(
            sheet.file().slats().run().value(),
            sheet.file().rack().bays(),
            between,
            sheet.file().timber().frame().section().value().first(),
            rail,
            sheet.file().slats().overhang());
    width.complaints(sheet, slatWidth);
    slatWidth.ifPresent(across -> new LongestStock(sheet).checkSlats(width, across));
    width.tellOfLongSlats(sheet);
    return width.holds(sheet) ? Optional.of(width) : Optional.empty();
  }

  /** As given, or else what the widest thing needs. */
  private static Optional<Sized> between(Worksheet sheet, Things things) {
    Optional<Length> given = sheet.file().rack().interiorWidth().map(Given::value);
    Optional<Sized> between =
        given.map(Sized::given).or(() -> things.widest().map(thing -> taking(sheet, thing)));
    return between.isPresent()
        ? between
        : sheet.complain(
            sheet.place("rack"),
            "nothing says how wide the rack is: give rack.interior-width (the clear width between"
                + " two frames) or holds (what it must take)");
  }

  private static Sized taking(Worksheet sheet, Thing thing) {
    Length width = thing.needAcross().snappedUp(sheet.increment());
    sheet.note(
        "rack.interior-width",
        "%s between two frames: %s%s"
            .formatted(
                sheet.show(width), thing.acrossWords(sheet), sheet.rounding(thing.needAcross())),
        "");
    return Sized.solved(width);
  }

  Length interior() {
    return between.length();
  }

  /** Whether every slat lies safely on its bearings. */
  boolean holds(Worksheet sheet) {
    return bears(sheet) && balances();
  }

  WidthChain withInterior(Length other) {
    return new WidthChain(run, bays, Sized.given(other), upright, rail, overhang);
  }

  WidthChain withRun(Run other) {
    return new WidthChain(other, bays, between, upright, rail, overhang);
  }

  private WidthChain withoutOverhang() {
    return new WidthChain(run, bays, between, upright, rail, Length.ZERO);
  }

  /** Over all frames and overhangs. */
  Length overall() {
    return interior().times(bays).plus(upright.times(bays + 1L)).plus(overhang.times(2));
  }

  /** Of the slats of each bay, from the left; one when they run through. */
  List<Length> slatLengths() {
    return run == Run.THROUGH
        ? List.of(overall())
        : IntStream.range(0, bays).mapToObj(this::slatLength).toList();
  }

  Length longestSlat() {
    return slatLengths().stream().reduce(Length.ZERO, Length::max);
  }

  /** The chain as it is printed. */
  Chain chain() {
    Links links = new Links().add("overhang", overhang).add("frame", upright);
    for (int bay = 0; bay < bays; bay++) {
      links.add("interior", between).add("frame", upright);
    }
    return links.add("overhang", overhang).closing("width", overall());
  }

  /**
   * Bearings are whole on an outer frame and half on an inner one. Where the width has no half in
   * whole nanometres, slats that meet leave one nanometre, so that alike slats stay alike.
   */
  private Length slatLength(int bay) {
    Length left = bay == 0 ? overhang.plus(upright) : upright.half();
    Length right = bay == bays - 1 ? upright.plus(overhang) : upright.half();
    return left.plus(interior()).plus(right);
  }

  private void complaints(Worksheet sheet, Optional<Length> slatWidth) {
    if (!bears(sheet)) {
      sheet.complain(
          sheet.file().slats().run().place(),
          "slats that meet on an inner frame bear on half of its rails, %s of %s, and need %s"
              .formatted(
                  sheet.show(rail.half()), sheet.show(rail), sheet.show(leastBearing(sheet))),
          withRun(Run.THROUGH)
              .ifStockHolds(
                  sheet,
                  slatWidth,
                  new Problem.Change("slats.run=through", "slats that cross all bays")));
    }
    if (!balances()) {
      sheet.complain(
          sheet.place("slats.overhang"),
          "an overhang of %s is more than half of the outer slats, %s long: they would tip"
              .formatted(sheet.show(overhang), sheet.show(outerSlat())),
          withoutOverhang()
              .ifStockHolds(
                  sheet,
                  slatWidth,
                  sheet.change("slats.overhang", Length.ZERO, "slats that end with the frames")));
    }
  }

  /** The change that gives this width, or none where its slats do not come out of the stock. */
  private List<Problem.Change> ifStockHolds(
      Worksheet sheet, Optional<Length> slatWidth, Problem.Change change) {
    LongestStock stock = new LongestStock(sheet);
    boolean holds = slatWidth.filter(across -> !stock.holdsSlat(longestSlat(), across)).isEmpty();
    return holds ? List.of(change) : List.of();
  }

  /** Common practice, no source: longer boards are hard to find, to carry and to keep straight. */
  private void tellOfLongSlats(Worksheet sheet) {
    RackFile.SlatStock stock = sheet.file().timber().slats();
    boolean unlisted = stock.lengths().isEmpty() && stock.boards().isEmpty();
    Length usual = sheet.metricOrInch(Length.mm(3000), Length.inches(120, 1));
    WidthChain perBay = withRun(Run.PER_BAY);
    boolean mayMeet = run == Run.THROUGH && bays > 1 && perBay.holds(sheet);
    if (unlisted && mayMeet && longestSlat().isMoreThan(usual)) {
      sheet.note(
          "slats.run",
          "slats that run through all bays are %s long, and boards of more than %s are hard to find"
              .formatted(sheet.show(longestSlat()), sheet.show(usual)),
          "set slats.run=per-bay to make them %s, or list what you can get in timber.slats.lengths"
              .formatted(sheet.showSpan(perBay.slatLengths())));
    }
  }

  private boolean bears(Worksheet sheet) {
    boolean meets = run == Run.PER_BAY && bays > 1;
    return !meets || !rail.half().isLessThan(leastBearing(sheet));
  }

  /** Common practice, no source: nails closer to the end than half of this split the slat. */
  private static Length leastBearing(Worksheet sheet) {
    return sheet.metricOrInch(Length.mm(10), Length.inches(3, 8));
  }

  /** A slat whose middle lies beyond its outer bearing tips when something stands there. */
  private boolean balances() {
    return !overhang.times(2).isMoreThan(outerSlat());
  }

  private Length outerSlat() {
    List<Length> lengths = slatLengths();
    return Length.min(lengths.get(0), lengths.get(lengths.size() - 1));
  }
}
