package org.slatwright.design.sizing;

import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.RackFile.Range;

/**
 * Along a rail, from the front uprights to the rear ones, and from it the depth of the frame.
 *
 * @param sizes what was known
 * @param rail between the uprights
 * @param even the row of every shelf; empty where slats are as wide as their boards, and each row
 *     is what the boards make it
 */
record SlatRowChain(RowSizes sizes, Sized rail, Optional<RowSizes.Row> even) {

  static Optional<SlatRowChain> close(Worksheet sheet, Things things, RowSizes given) {
    if (given.rail().isEmpty() && given.count().isEmpty() && things.all().isEmpty()) {
      return sheet.complain(
          sheet.place("rack"),
          "nothing says how deep the rack is: give rack.rail-length (between the uprights of a"
              + " frame), slats.per-shelf (how many slats lie side by side), or holds (what it must"
              + " take)");
    }
    Optional<Length> taking =
        things.deepest().flatMap(thing -> taking(sheet, given, thing.needDeep()));
    RowSizes sizes = taking.map(given::withRail).orElse(given);
    Optional<SlatRowChain> chain =
        Sections.areOfBoards(sheet) ? ofBoards(sheet, sizes) : ofAlike(sheet, sizes);
    taking.ifPresent(rail -> tellOfThing(sheet, things.deepest().orElseThrow(), rail));
    chain
        .map(closed -> closed.rail().length())
        .or(sizes::rail)
        .ifPresent(rail -> new LongestStock(sheet).checkRails(sizes, rail));
    return chain;
  }

  /** The rail that is solved to take that, unless given or settled otherwise. */
  private static Optional<Length> taking(Worksheet sheet, RowSizes given, Length need) {
    boolean isFree = given.rail().isEmpty() && given.count().isEmpty();
    return isFree && Sections.areOfBoards(sheet)
        ? Optional.of(BoardRows.shortestRail(sheet, given, Length.max(need, given.leastRail())))
        : new LeastRail(given, need).solved();
  }

  private static Optional<SlatRowChain> ofAlike(Worksheet sheet, RowSizes sizes) {
    Optional<RowSizes.Row> row = sizes.close();
    row.ifPresentOrElse(r -> tell(sheet, sizes, r), () -> complain(sheet, sizes));
    return row.map(r -> new SlatRowChain(sizes, sized(sheet, r.rail().length()), Optional.of(r)));
  }

  /** On a rail that is known any row is left to the boards. */
  private static Optional<SlatRowChain> ofBoards(Worksheet sheet, RowSizes sizes) {
    if (isGapOutside(sizes) && sizes.close().isEmpty()) {
      complainOfGap(sheet, sizes);
      return Optional.empty();
    }
    Optional<Length> builtUp = sizes.close().map(row -> row.rail().length());
    if (sizes.rail().isEmpty()) {
      builtUp.ifPresent(rail -> tellBuiltUp(sheet, sizes, rail));
    }
    return sizes
        .rail()
        .or(() -> builtUp)
        .filter(rail -> BoardRows.on(sheet, sizes, rail).close())
        .map(rail -> new SlatRowChain(sizes, sized(sheet, rail), Optional.empty()));
  }

  private static Sized sized(Worksheet sheet, Length rail) {
    return Sized.of(sheet.file().rack().railLength().map(Given::value), rail);
  }

  /** The frame from the front back, as printed. */
  Chain depthChain(Length uprightDepth) {
    return new Links()
        .add("upright", uprightDepth)
        .add("rail", rail)
        .add("upright", uprightDepth)
        .closing("depth", rail.length().plus(uprightDepth.times(2)));
  }

  private static void tell(Worksheet sheet, RowSizes sizes, RowSizes.Row row) {
    if (sizes.count().isEmpty()) {
      sheet.note(
          "slats.per-shelf",
          "%s to a shelf: as many as the rails take".formatted(slats(sheet, sizes, row.count())),
          "");
    }
    if (sizes.rail().isEmpty()) {
      sheet.note(
          "rack.rail-length",
          "the rails are %s: what %s take"
              .formatted(sheet.show(row.rail().length()), slats(sheet, sizes, row.count())),
          "");
    }
    if (sizes.gap().isEmpty() && row.count() > 1) {
      tellGap(sheet, sizes, row.gap().length());
    }
  }

  private static void tellBuiltUp(Worksheet sheet, RowSizes sizes, Length rail) {
    sheet.note(
        "rack.rail-length",
        "the rails are %s: what %s take, the middle width of the boards"
            .formatted(sheet.show(rail), slats(sheet, sizes, sizes.count().orElseThrow())),
        "");
  }

  private static void tellOfThing(Worksheet sheet, Thing thing, Length rail) {
    Length need = thing.needDeep();
    boolean alone = rail.equals(need.snappedUp(sheet.increment()));
    String longer =
        rail.isLessThan(need)
            ? "the longest that the slats close on, but less than "
            : "the shortest that slats and dowels allow for ";
    sheet.note(
        "rack.rail-length",
        "the rails are %s: %s%s"
            .formatted(
                sheet.show(rail),
                (alone ? "" : longer) + thing.deepWords(sheet),
                alone ? sheet.rounding(need) : ""),
        "");
  }

  private static void tellGap(Worksheet sheet, RowSizes sizes, Length gap) {
    if (!sizes.isWithinRange(gap)) {
      sheet.warn(
          "slats.gap",
          "the gap between slats is %s, outside the usual %s"
              .formatted(sheet.show(gap), showRange(sheet, sizes.range())),
          "another slats.per-shelf or rack.rail-length brings it closer; slats.gap-range says what"
              + " you allow");
      return;
    }
    String why =
        sizes.rail().isPresent()
            ? "what the rails leave, shared equally"
            : "the middle of the range";
    sheet.note("slats.gap", "the gap between slats is %s: %s".formatted(sheet.show(gap), why), "");
  }

  private static void complain(Worksheet sheet, RowSizes sizes) {
    if (isGapOutside(sizes)) {
      complainOfGap(sheet, sizes);
    } else {
      Place place = sheet.file().rack().railLength().map(Given::place).orElse(sheet.place("rack"));
      sheet.complain(place, complaint(sheet, sizes), new RowChanges(sheet, sizes).proposed());
    }
  }

  private static boolean isGapOutside(RowSizes sizes) {
    return sizes.binding() && sizes.gap().filter(gap -> !sizes.isWithinRange(gap)).isPresent();
  }

  private static void complainOfGap(Worksheet sheet, RowSizes sizes) {
    sheet.complain(
        sheet.file().slats().gap().orElseThrow().place(),
        "the gap of %s is outside slats.gap-range, %s"
            .formatted(sheet.show(sizes.gap().orElseThrow()), showRange(sheet, sizes.range())),
        new RowChanges(sheet, sizes).proposed());
  }

  /** Why slats do not lie on a rail that was given. */
  private static String complaint(Worksheet sheet, RowSizes sizes) {
    Length rail = sizes.rail().orElseThrow();
    if (sizes.width().isMoreThan(rail)) {
      return "slats of %s are wider than the rails of %s"
          .formatted(sheet.show(sizes.width()), sheet.show(rail));
    }
    if (sizes.count().isEmpty()) {
      return unevenComplaint(sheet, sizes, rail);
    }
    int count = sizes.count().get();
    Length used = sizes.used(count, sizes.gap().orElse(Length.ZERO));
    return used.isMoreThan(rail)
        ? tooWideComplaint(sheet, sizes, used)
        : "%s on rails of %s leave gaps of %s, outside slats.gap-range, %s"
            .formatted(
                slats(sheet, sizes, count),
                sheet.show(rail),
                sheet.show(sizes.spread(count)),
                showRange(sheet, sizes.range()));
  }

  private static String tooWideComplaint(Worksheet sheet, RowSizes sizes, Length used) {
    Length rail = sizes.rail().orElseThrow();
    return "%s%s take %s, %s more than the rails of %s"
        .formatted(
            slats(sheet, sizes, sizes.count().orElseThrow()),
            sizes.gap().map(gap -> " with gaps of " + sheet.show(gap)).orElse(""),
            sheet.show(used),
            sheet.show(used.minus(rail)),
            sheet.show(rail));
  }

  private static String unevenComplaint(Worksheet sheet, RowSizes sizes, Length rail) {
    int count = sizes.mostAt(sizes.narrowest());
    String few =
        count == 1
            ? slats(sheet, sizes, 1) + " leaves " + sheet.show(rail.minus(sizes.width())) + " bare"
            : slats(sheet, sizes, count) + " leave gaps of " + sheet.show(sizes.spread(count));
    return "no number of slats leaves gaps of %s on rails of %s: %s, and %s"
        .formatted(
            showRange(sheet, sizes.range()),
            sheet.show(rail),
            few,
            oneMore(sheet, sizes, count + 1));
  }

  private static String oneMore(Worksheet sheet, RowSizes sizes, int count) {
    boolean fits = count > 1 && !sizes.spread(count).isNegative();
    return fits
        ? count + " leave gaps of " + sheet.show(sizes.spread(count))
        : count + " are too many";
  }

  private static String slats(Worksheet sheet, RowSizes sizes, int count) {
    return (count == 1 ? "one slat of " : count + " slats of ") + sheet.show(sizes.width());
  }

  private static String showRange(Worksheet sheet, Range range) {
    return sheet.show(range.from()) + " to " + sheet.show(range.to());
  }
}
