package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Run;

/** Whether the longest stock is long enough for the longest part of each kind. */
final class LongestStock {

  private final Worksheet sheet;
  private final Length endTrim;

  LongestStock(Worksheet sheet) {
    this.sheet = sheet;
    this.endTrim = sheet.file().shop().endTrim();
  }

  boolean holdsUpright(Length length) {
    return longestFrameStock().filter(length::isMoreThan).isEmpty();
  }

  /** Rails of their own stock have no lengths listed. */
  boolean holdsRail(Length length) {
    return sheet.file().timber().railSection().isPresent() || holdsUpright(length);
  }

  boolean holdsSlat(Length length, Length slatWidth) {
    return longestSlatStock(slatWidth).filter(length::isMoreThan).isEmpty();
  }

  /** Rod needs no trim: the end of a dowel is chamfered, not squared. */
  boolean holdsDowel(Length length) {
    return shorterRod(length).isEmpty();
  }

  void checkUprights(HeightSizes sizes, Length needed) {
    if (!holdsUpright(needed)) {
      complain(
          "rack.upright",
          "uprights",
          needed,
          usable -> usable.isPositive() && sizes.withUpright(usable).close().isPresent());
    }
  }

  void checkRails(RowSizes sizes, Length needed) {
    if (!holdsRail(needed)) {
      complain(
          "rack.rail-length",
          "rails",
          needed,
          usable ->
              !usable.isLessThan(sizes.leastRail()) && sizes.withRail(usable).close().isPresent());
    }
  }

  /** With the longest that the frame's stock gives, where the chain closes on it. */
  private void complain(String key, String parts, Length needed, Predicate<Length> closes) {
    Length longest = longestFrameStock().orElseThrow();
    Length usable = longest.snappedDown(sheet.increment());
    sheet.complain(
        sheet.place(key),
        tooShort(parts, needed, "timber.frame.lengths", longest),
        closes.test(usable)
            ? List.of(sheet.change(key, usable, parts + " of " + sheet.show(usable)))
            : List.of());
  }

  void checkSlats(WidthChain chain, Length slatWidth) {
    Length needed = chain.longestSlat();
    if (holdsSlat(needed, slatWidth)) {
      return;
    }
    Length longest = longestSlatStock(slatWidth).orElseThrow();
    boolean mayMeet = chain.run() == Run.THROUGH && chain.bays() > 1;
    String perBay =
        mayMeet
            ? "; with slats.run: per-bay they would be "
                + sheet.show(chain.withRun(Run.PER_BAY).longestSlat())
            : "";
    sheet.complain(
        sheet.place("rack.interior-width"),
        tooShort("slats", needed, "timber.slats", longest) + perBay,
        slatChanges(chain, longest, mayMeet));
  }

  void checkDowels(Length needed) {
    shorterRod(needed)
        .ifPresent(
            rod ->
                sheet.complain(
                    rod.place(),
                    "dowels of %s do not come out of rod of %s"
                        .formatted(sheet.show(needed), sheet.show(rod.value()))));
  }

  /** The rod when dowels are cut from it and it is shorter than that. */
  private Optional<Given<Length>> shorterRod(Length needed) {
    RackFile.Dowel dowel = sheet.file().timber().dowel();
    Optional<Given<Length>> rod = dowel.length().isEmpty() ? dowel.rodLength() : Optional.empty();
    return rod.filter(given -> needed.isMoreThan(given.value()));
  }

  private String tooShort(String parts, Length needed, String key, Length longest) {
    return "the %s are %s long, but the longest that %s gives is %s, %s squared off each end"
        .formatted(
            parts,
            sheet.show(needed),
            key,
            sheet.show(Length.max(longest, Length.ZERO)),
            sheet.show(endTrim));
  }

  private List<Problem.Change> slatChanges(WidthChain chain, Length longest, boolean mayMeet) {
    List<Problem.Change> changes = new ArrayList<>();
    WidthChain perBay = chain.withRun(Run.PER_BAY);
    if (mayMeet && perBay.holds(sheet) && !perBay.longestSlat().isMoreThan(longest)) {
      changes.add(
          new Problem.Change(
              "slats.run=per-bay",
              "slats that meet on the inner frames, %s long"
                  .formatted(sheet.showSpan(perBay.slatLengths()))));
    }
    Length over = chain.longestSlat().minus(longest);
    int shared = chain.run() == Run.THROUGH ? chain.bays() : 1;
    Length interior =
        chain
            .interior()
            .minus(over.negated().dividedBy(shared).negated())
            .snappedDown(sheet.increment());
    if (interior.isPositive() && chain.withInterior(interior).holds(sheet)) {
      changes.add(
          sheet.change(
              "rack.interior-width", interior, sheet.show(interior) + " between two frames"));
    }
    return changes;
  }

  private Optional<Length> longestFrameStock() {
    return longest(sheet.file().timber().frame().lengths());
  }

  private Optional<Length> longest(List<RackFile.StockLength> lengths) {
    return lengths.stream().map(stock -> stock.length().value().minus(ends())).reduce(Length::max);
  }

  private Length ends() {
    return endTrim.times(2);
  }

  /** Boards narrower than the slats cannot be ripped to them. */
  private Optional<Length> longestSlatStock(Length slatWidth) {
    RackFile.SlatStock stock = sheet.file().timber().slats();
    Stream<Length> boards =
        stock.boards().stream()
            .map(Given::value)
            .filter(board -> !board.width().isLessThan(slatWidth))
            .map(this::longestStretch);
    return Stream.concat(longest(stock.lengths()).stream(), boards).reduce(Length::max);
  }

  private Length longestStretch(RackFile.Board board) {
    return ClearStretches.lengths(board, endTrim).stream().reduce(Length.ZERO, Length::max);
  }
}
