package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.Board;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.boards.BoardChooser;
import org.slatwright.design.boards.RowNeed;
import org.slatwright.design.boards.RowRules;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;

/**
 * Rows of slats that are as wide and thick as their reclaimed boards, on rails of one length.
 *
 * @param sizes what was known of a row, the width being the middle one of the boards
 * @param rail its length
 */
record BoardRows(Worksheet sheet, RowSizes sizes, Length rail, List<Board> boards) {

  /** Rails are looked for in so many increments, up and down. */
  private static final int NEAR = 1_000;

  static BoardRows on(Worksheet sheet, RowSizes sizes, Length rail) {
    return new BoardRows(sheet, sizes, rail, SuppliesOf.file(sheet.file()).boards());
  }

  /**
   * The shortest rail from {@code need} up on which rows close, or {@code need} where none does.
   */
  static Length shortestRail(Worksheet sheet, RowSizes sizes, Length need) {
    BoardRows rows = on(sheet, sizes, need.snappedUp(sheet.increment()));
    return rows.nearest(rows.rail(), 1).orElse(rows.rail());
  }

  /** Which slats lie on each shelf, and from which board each is cut; of rows that close. */
  BoardChoice choose(int shelves, List<Length> lengths) {
    List<RowNeed> needs =
        IntStream.range(0, shelves)
            .boxed()
            .flatMap(
                shelf ->
                    IntStream.range(0, lengths.size())
                        .mapToObj(run -> new RowNeed(shelf, run, lengths.get(run))))
            .toList();
    return BoardChooser.choose(boards, needs, rules(rail, sizes.count()));
  }

  /**
   * No opening is wider than the widest gap, be it between two slats or at the margins; but where
   * the maker gives the gap, hardly any boards would close a row within margins of, say, 3 mm:
   * there a margin may be as wide as gaps usually are. Where the maker gives more, gaps and margins
   * may be what slats of the middle width leave, so that boards are not refused what slats of one
   * width are allowed.
   */
  private RowRules rules(Length on, Optional<Integer> count) {
    Length least = sizes.gap().orElse(sizes.range().from());
    Length most = sizes.gap().orElse(sizes.range().to());
    Optional<Length> even = even(on, count);
    return new RowRules(
        on,
        even.map(gap -> Length.min(least, gap)).orElse(least),
        even.map(gap -> Length.max(most, gap)).orElse(most),
        Length.max(Length.max(most, sizes.range().to()), margin(on, count, most)),
        count,
        sheet.file().slats().thicknessStep(),
        sheet.increment(),
        sheet.file().shop().kerf());
  }

  /** The gap that slats of the middle width leave, where their number alone decides it. */
  private Optional<Length> even(Length on, Optional<Integer> count) {
    return count
        .filter(slats -> slats > 1 && sizes.gap().isEmpty() && !sizes.binding())
        .map(slats -> on.minus(sizes.width().times(slats)).dividedBy(slats - 1L))
        .map(gap -> Length.max(Length.ZERO, gap));
  }

  /** What slats of the middle width leave at the back, where a given gap or number decides it. */
  private Length margin(Length on, Optional<Integer> count, Length gap) {
    int slats = count.orElseGet(() -> sizes.withRail(on).mostAt(gap));
    boolean decided = slats == 1 || (slats > 1 && sizes.gap().isPresent());
    Length free = on.minus(sizes.used(slats, gap));
    return decided && (count.isPresent() || sizes.gap().isPresent())
        ? free.minus(free.half())
        : Length.ZERO;
  }

  /** Whether any slats that boards so wide could give close a row; complains where none do. */
  boolean close() {
    if (closeOn(rail)) {
      return true;
    }
    sheet.complain(
        sheet.file().rack().railLength().map(Given::place).orElse(sheet.place("rack")),
        sizes.count().map(this::complaint).orElseGet(this::complaint),
        changes());
    return false;
  }

  private boolean closeOn(Length other) {
    List<Integer> counts = BoardChooser.counts(boards, rules(other, sizes.count()));
    return sizes.count().map(counts::contains).orElse(!counts.isEmpty());
  }

  private String complaint() {
    return "no number of slats from %s to %s wide leaves gaps of %s on rails of %s"
        .formatted(sheet.show(narrowest()), sheet.show(widest()), gaps(), sheet.show(rail));
  }

  private String complaint(int count) {
    RowRules rules = rules(rail, sizes.count());
    Length used = narrowest().times(count).plus(rules.leastGap().times(count - 1L));
    return used.isMoreThan(rail)
        ? "%s, the narrowest that the boards give, take %s, %s more than the rails of %s"
            .formatted(
                slats(count, narrowest()),
                sheet.show(used),
                sheet.show(used.minus(rail)),
                sheet.show(rail))
        : "%s, the widest board, leave wider gaps than %s on rails of %s"
            .formatted(slats(count, widest()), sheet.show(rules.mostGap()), sheet.show(rail));
  }

  private String slats(int count, Length width) {
    return (count == 1 ? "one slat of " : count + " slats of ") + sheet.show(width);
  }

  private String gaps() {
    return sizes
        .gap()
        .map(sheet::show)
        .orElse(sheet.show(sizes.range().from()) + " to " + sheet.show(sizes.range().to()));
  }

  private List<Problem.Change> changes() {
    List<Problem.Change> changes = new ArrayList<>();
    rail(-1).ifPresent(changes::add);
    rail(1).ifPresent(changes::add);
    sizes.count().flatMap(this::count).ifPresent(changes::add);
    range().ifPresent(changes::add);
    return changes;
  }

  private Optional<Problem.Change> rail(int way) {
    return nearest(rail.snappedDown(sheet.increment()), way)
        .map(other -> sheet.change("rack.rail-length", other, "rails of " + sheet.show(other)));
  }

  /** The nearest rail on which a row closes, shorter or longer. */
  private Optional<Length> nearest(Length from, int way) {
    return IntStream.rangeClosed(0, NEAR)
        .mapToObj(step -> from.plus(sheet.increment().times((long) way * step)))
        .takeWhile(Length::isPositive)
        .filter(this::closeOn)
        .findFirst();
  }

  private Optional<Problem.Change> count(int asked) {
    return BoardChooser.counts(boards, rules(rail, Optional.empty())).stream()
        .min(Comparator.comparing(count -> Math.abs(count - asked)))
        .map(
            count ->
                new Problem.Change(
                    "slats.per-shelf=" + count, count == 1 ? "one slat" : count + " slats"));
  }

  /** Up to the gaps that slats of the middle width leave. */
  private Optional<Problem.Change> range() {
    return sizes
        .count()
        .filter(count -> count > 1 && sizes.binding() && sizes.gap().isEmpty())
        .map(count -> sizes.withRail(rail).spread(count))
        .filter(Length::isPositive)
        .map(
            even ->
                new Problem.Change(
                    "slats.gap-range="
                        + sheet.spell(
                            Length.min(sizes.range().from(), even),
                            "..",
                            Length.max(sizes.range().to(), even)),
                    "a wider range"));
  }

  private Length narrowest() {
    return BoardChooser.narrowest(boards);
  }

  private Length widest() {
    return Collections.max(boards.stream().map(Board::width).toList());
  }
}
