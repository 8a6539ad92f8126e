package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Clear;

/**
 * The openings that the height chain begins with: those of the rack file, or else those that the
 * things to be held ask for.
 */
record Openings(Worksheet sheet, Things things) {

  private static final String KEY = "rack.openings";

  /** As many as a rack file may have. */
  private static final int MOST = 99;

  /** The heights with openings; empty when nothing says how high the rack is. */
  Optional<HeightSizes> of(HeightSizes heights) {
    Optional<List<RackFile.Opening>> given = sheet.file().rack().openings().map(Given::value);
    if (given.isPresent()) {
      return isShared(heights, given.get())
          ? Optional.of(heights.withEntries(given.get().stream().map(this::entry).toList()))
          : Optional.empty();
    }
    if (heights.upright().isPresent()) {
      return Optional.of(
          things.highest().map(t -> asManyAsTake(heights, t)).orElse(evens(heights, 1)));
    }
    return things.all().isEmpty() ? ofUnknownHeight() : Optional.of(oneForEach(heights));
  }

  private Optional<HeightSizes> ofUnknownHeight() {
    return sheet.complain(
        sheet.place("rack"),
        "nothing says how high the rack is: give rack.upright (the full height of an upright),"
            + " rack.openings (the clear height above each shelf but the top one), or holds (what"
            + " it must take)");
  }

  /** Even openings need an upright to share. */
  private boolean isShared(HeightSizes heights, List<RackFile.Opening> openings) {
    Optional<Place> even =
        openings.stream()
            .filter(opening -> opening.clear().value() instanceof Clear.Even)
            .map(opening -> opening.clear().place())
            .findFirst()
            .filter(place -> heights.upright().isEmpty());
    even.ifPresent(
        place ->
            sheet.complain(
                place,
                "an even opening takes its share of what the uprights leave, but rack.upright is"
                    + " left out: give rack.upright, or a clear height here"));
    return even.isEmpty();
  }

  private HeightSizes.Entry entry(RackFile.Opening opening) {
    Clear clear = opening.clear().value();
    if (clear instanceof Clear.Fixed fixed) {
      return new HeightSizes.Entry(Optional.of(Sized.given(fixed.height())), opening.count());
    }
    return clear instanceof Clear.For named
        ? entryFor(new Thing(named.thing(), false), opening.count())
        : HeightSizes.Entry.even(opening.count());
  }

  private HeightSizes.Entry entryFor(Thing thing, int count) {
    Length clear = thing.needAbove().snappedUp(sheet.increment());
    sheet.note(
        KEY,
        "%s clear: %s%s"
            .formatted(
                sheet.show(clear), thing.aboveWords(sheet), sheet.rounding(thing.needAbove())),
        "");
    return new HeightSizes.Entry(Optional.of(Sized.solved(clear)), count);
  }

  private HeightSizes oneForEach(HeightSizes heights) {
    return heights.withEntries(things.all().stream().map(thing -> entryFor(thing, 1)).toList());
  }

  /** One where not even that takes it: what does not fit shows when all is closed. */
  private HeightSizes asManyAsTake(HeightSizes heights, Thing highest) {
    int count =
        IntStream.rangeClosed(1, MOST)
            .takeWhile(n -> takes(heights, n, highest.needAbove()))
            .max()
            .orElse(1);
    if (takes(heights, count, highest.needAbove())) {
      sheet.note(
          KEY,
          "%s: as many as take %s, %s"
              .formatted(
                  count == 1 ? "one even opening" : count + " even openings",
                  highest.aboveWords(sheet),
                  sheet.show(highest.needAbove())),
          "give " + KEY + " to set them");
    }
    return evens(heights, count);
  }

  private static boolean takes(HeightSizes heights, int count, Length need) {
    return evens(heights, count)
        .close()
        .filter(closed -> closed.evens().stream().noneMatch(need::isMoreThan))
        .isPresent();
  }

  private static HeightSizes evens(HeightSizes heights, int count) {
    return heights.withEntries(List.of(HeightSizes.Entry.even(count)));
  }
}
