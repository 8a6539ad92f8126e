package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;

/**
 * From the floor to the top of the uprights.
 *
 * @param sizes what was known
 * @param heights what closes
 */
record HeightChain(HeightSizes sizes, Heights heights, Length railHeight, Length slatThickness) {

  static Optional<HeightChain> close(
      Worksheet sheet, Things things, Length railHeight, Length slatThickness) {
    return sizes(sheet, things, railHeight.plus(slatThickness))
        .flatMap(
            sizes -> {
              Optional<Heights> heights = sizes.close();
              heights.ifPresentOrElse(
                  h -> HeightNotes.tell(sheet, sizes, h), () -> complain(sheet, sizes));
              heights
                  .map(h -> h.upright().length())
                  .or(sizes::upright)
                  .ifPresent(u -> new LongestStock(sheet).checkUprights(sizes, u));
              return heights.map(h -> new HeightChain(sizes, h, railHeight, slatThickness));
            });
  }

  /** The chain as it is printed. */
  Chain chain() {
    Links links = new Links().add("foot", heights.foot());
    for (Sized clear : heights.clears()) {
      addShelf(links).add("clear", clear);
    }
    return addShelf(links).add("top", heights.top()).closing("height", heights.upright().length());
  }

  private Links addShelf(Links links) {
    return links.add("rail", railHeight).add("slat", slatThickness);
  }

  private static Optional<HeightSizes> sizes(Worksheet sheet, Things things, Length shelf) {
    RackFile.Rack rack = sheet.file().rack();
    HeightSizes noOpenings =
        new HeightSizes(
            shelf,
            sheet.increment(),
            sheet.metricOrInch(Length.mm(100), Length.inches(4, 1)),
            rack.upright().map(Given::value),
            rack.foot().map(Given::value),
            List.of(),
            rack.top().map(top -> above(top.value())));
    return new Openings(sheet, things).of(noOpenings);
  }

  private static Length above(RackFile.Top top) {
    return top instanceof RackFile.Top.Above above ? above.height() : Length.ZERO;
  }

  /** Only a chain with an upright given can fail to close. */
  private static void complain(Worksheet sheet, HeightSizes sizes) {
    Given<Length> upright = sheet.file().rack().upright().orElseThrow();
    sheet.complain(
        upright.place(), complaint(sheet, sizes), new HeightChanges(sheet, sizes).proposed());
  }

  private static String complaint(Worksheet sheet, HeightSizes sizes) {
    String upright = sheet.show(sizes.upright().orElseThrow());
    String sum = sheet.show(sizes.sum()) + " (" + terms(sheet, sizes) + ")";
    Length spare = sizes.spare();
    if (sizes.evens() == 0) {
      String failing = sheet.show(spare.abs()) + (spare.isNegative() ? " too long" : " too short");
      return "the heights add up to " + sum + ", " + failing + " for uprights of " + upright;
    }
    String left =
        spare.isNegative()
            ? "they are " + sheet.show(spare.abs()) + " too short already"
            : "only " + sheet.show(spare) + " is left";
    return "uprights of %s leave no clear height for %s: the other heights add up to %s, so %s"
        .formatted(upright, plural(sizes.evens(), "even opening"), sum, left);
  }

  private static String terms(Worksheet sheet, HeightSizes sizes) {
    StringBuilder terms = new StringBuilder();
    if (!sizes.reckonedFoot().isZero()) {
      terms.append("foot ").append(sheet.show(sizes.reckonedFoot())).append(" + ");
    }
    terms.append(plural(sizes.shelves(), "shelf"));
    terms.append(" of rail and slat, ").append(sheet.show(sizes.shelf())).append(" each");
    if (!sizes.fixedOpenings().isZero()) {
      terms.append(" + openings ").append(sheet.show(sizes.fixedOpenings()));
    }
    sizes.top().filter(Length::isPositive).ifPresent(t -> terms.append(" + top " + sheet.show(t)));
    return terms.toString();
  }

  private static String plural(int count, String noun) {
    String many = noun.endsWith("f") ? noun.substring(0, noun.length() - 1) + "ves" : noun + "s";
    return count + " " + (count == 1 ? noun : many);
  }
}
