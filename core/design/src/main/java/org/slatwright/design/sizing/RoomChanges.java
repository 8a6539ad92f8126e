package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;

/** The settings worth trying for a thing that does not go in, the likeliest first. */
record RoomChanges(Worksheet sheet, Heights heights, RowSizes row) {

  /** A row of more slats than that is another rack. */
  private static final int MOST_SLATS_MORE = 20;

  Stream<String> to(Misfit misfit) {
    Length need = misfit.need().snappedUp(sheet.increment());
    return switch (misfit.way()) {
      case ACROSS -> Stream.of(setting("rack.interior-width", need));
      case DEEP -> deeper(need);
      case ABOVE -> higher(misfit, need);
    };
  }

  private Stream<String> deeper(Length need) {
    Stream<String> rails =
        Stream.concat(Stream.of(need), new LeastRail(row.withoutRail(), need).solved().stream())
            .map(rail -> setting("rack.rail-length", rail));
    Stream<String> slats =
        row.count().stream()
            .flatMap(count -> IntStream.rangeClosed(1, MOST_SLATS_MORE).mapToObj(n -> count + n))
            .map(count -> "slats.per-shelf=" + count);
    return row.rail().isPresent() ? Stream.concat(rails, slats) : Stream.concat(slats, rails);
  }

  private Stream<String> higher(Misfit misfit, Length need) {
    return Stream.of(
            highestGiven().map(key -> setting(key, need)).stream(),
            longerUprights(misfit),
            fewerEvens())
        .flatMap(settings -> settings);
  }

  /** The key of the opening that needs the least added. */
  private Optional<String> highestGiven() {
    return openings().stream()
        .filter(opening -> opening.clear().value() instanceof RackFile.Clear.Fixed)
        .max((a, b) -> height(a).compareTo(height(b)))
        .map(opening -> opening.clear().key());
  }

  private static Length height(RackFile.Opening opening) {
    return opening.clear().value() instanceof RackFile.Clear.Fixed fixed
        ? fixed.height()
        : Length.ZERO;
  }

  /** As much longer as all even openings lack. */
  private Stream<String> longerUprights(Misfit misfit) {
    Length lack =
        heights.evens().stream().map(misfit.need()::minus).reduce(Length.ZERO, Length::plus);
    Length upright = heights.upright().length().plus(lack).snappedUp(sheet.increment());
    return lack.isPositive() ? Stream.of(setting("rack.upright", upright)) : Stream.empty();
  }

  private Stream<String> fewerEvens() {
    int openings = heights.clears().size();
    return IntStream.range(1, openings)
        .mapToObj(fewer -> "rack.openings=[{clear: even, count: " + (openings - fewer) + "}]");
  }

  private List<RackFile.Opening> openings() {
    return sheet.file().rack().openings().map(Given::value).orElse(List.of());
  }

  private String setting(String key, Length value) {
    return key + "=" + sheet.spell(value);
  }
}
