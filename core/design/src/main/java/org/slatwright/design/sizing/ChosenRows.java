package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.Board;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.boards.BoardChoice.Missing;
import org.slatwright.design.boards.BoardChoice.Row;
import org.slatwright.design.boards.BoardChoice.Slat;
import org.slatwright.design.boards.RowNeed;

/** Tells which slats were chosen from reclaimed boards, and what they lack. */
final class ChosenRows {

  private static final String BOARDS = "timber.slats.boards";

  private final Worksheet sheet;
  private final RowSizes sizes;
  private final List<Board> boards;
  private final BoardChoice choice;
  private final RowNames names;

  ChosenRows(BoardRows rows, BoardChoice choice) {
    this.sheet = rows.sheet();
    this.sizes = rows.sizes();
    this.boards = rows.boards();
    this.choice = choice;
    this.names = RowNames.of(choice.rows().stream().map(Row::need).toList());
  }

  void tell() {
    tellCounts();
    tellGaps();
    tellRips();
    tellMissing();
    tellWhetherProved();
  }

  private void tellCounts() {
    if (sizes.count().isPresent()) {
      return;
    }
    Map<Integer, List<Row>> alike = alike(row -> row.slats().size());
    List<String> each = new ArrayList<>();
    alike.forEach(
        (count, rows) ->
            each.add(
                (count == 1 ? "one slat" : count + " slats")
                    + (alike.size() == 1 ? " to a shelf" : " on " + words(rows))));
    sheet.note("slats.per-shelf", String.join("; ", each) + ": as the boards allow", "");
  }

  private void tellGaps() {
    List<Length> gaps =
        choice.rows().stream().filter(row -> row.slats().size() > 1).map(Row::gap).toList();
    if (gaps.isEmpty() || sizes.gap().isPresent()) {
      return;
    }
    String shown =
        gaps.stream().distinct().count() == 1
            ? "the gap between slats is " + sheet.show(gaps.get(0))
            : "the gaps between slats are " + sheet.showSpan(gaps);
    if (gaps.stream().allMatch(sizes::isWithinRange)) {
      sheet.note("slats.gap", shown + ": what the boards leave, shared equally on each shelf", "");
    } else {
      sheet.warn(
          "slats.gap",
          "%s, outside the usual %s to %s"
              .formatted(shown, sheet.show(sizes.range().from()), sheet.show(sizes.range().to())),
          "another slats.per-shelf or rack.rail-length brings it closer; slats.gap-range says what"
              + " you allow");
    }
  }

  /** A board that is narrowed, and how far. */
  private record Ripped(int board, Length width) {}

  private void tellRips() {
    Map<Ripped, Set<RowNeed>> ripped = new LinkedHashMap<>();
    for (Row row : choice.rows()) {
      for (Slat slat : row.slats()) {
        slat.source()
            .filter(BoardChoice.Source::ripped)
            .map(source -> new Ripped(source.board(), slat.width()))
            .ifPresent(
                rip -> ripped.computeIfAbsent(rip, r -> new LinkedHashSet<>()).add(row.need()));
      }
    }
    ripped.forEach(
        (rip, needs) ->
            sheet.note(
                BOARDS,
                "%s is ripped to %s for %s: %s"
                    .formatted(
                        boards.get(rip.board()).mark(),
                        sheet.show(rip.width()),
                        names.words(List.copyOf(needs)),
                        choice.proved()
                            ? "whole boards alone do not fill as many shelves"
                            : "with whole boards alone, no way was found to fill as many shelves"),
                ""));
  }

  private void tellWhetherProved() {
    if (!choice.proved()) {
      sheet.note(
          BOARDS,
          "the slats are the best choice found, not proved the best: there are too many ways to"
              + " share out these boards to try them all",
          choice.rows().stream().allMatch(Row::isFilled)
              ? "another choice may rip fewer or waste a little less"
              : "another choice may fill one more shelf");
    }
  }

  private void tellMissing() {
    List<Row> open = choice.rows().stream().filter(row -> !row.isFilled()).toList();
    if (open.isEmpty()) {
      return;
    }
    List<Row> filled = choice.rows().stream().filter(Row::isFilled).toList();
    sheet.warn(
        BOARDS,
        "the boards fill %s; still to be found: %s"
            .formatted(
                filled.isEmpty() ? "no shelf" : words(filled) + " alone",
                String.join("; ", missing(open))),
        "add boards to timber.slats.boards, %s longer than their slats where both ends are squared"
                .formatted(sheet.show(sheet.file().shop().endTrim().times(2)))
            + " off, or make the rack smaller");
  }

  /** A slat that is missing, and what would do in its place. */
  private record Lack(Slat slat, Missing room) {}

  /** Slats that are alike together, with the rows that lack them. */
  private List<String> missing(List<Row> open) {
    Map<Lack, List<Row>> lacking = new LinkedHashMap<>();
    for (Row row : open) {
      Missing room = row.missing().orElseThrow();
      row.slats().stream()
          .filter(slat -> slat.source().isEmpty())
          .map(slat -> new Lack(slat, room))
          .forEach(lack -> lacking.computeIfAbsent(lack, l -> new ArrayList<>()).add(row));
    }
    List<String> missing = new ArrayList<>();
    lacking.forEach((lack, rows) -> missing.add(missing(lack, rows)));
    return missing;
  }

  /**
   * @param rows each as often as it lacks such a slat
   */
  private String missing(Lack lack, List<Row> rows) {
    Slat slat = lack.slat();
    Missing room = lack.room();
    return "%s of %s × %s × %s for %s (%s wide and %s thick will do)"
        .formatted(
            rows.size() == 1 ? "1 slat" : rows.size() + " slats",
            sheet.show(slat.length()),
            sheet.show(slat.width()),
            sheet.show(slat.thickness()),
            words(new LinkedHashSet<>(rows)),
            sheet.showSpan(List.of(room.narrowest(), room.widest())),
            sheet.showSpan(List.of(room.thinnest(), room.thickest())));
  }

  private String words(Collection<Row> rows) {
    return names.words(rows.stream().map(Row::need).toList());
  }

  private <K> Map<K, List<Row>> alike(Function<Row, K> key) {
    Map<K, List<Row>> alike = new LinkedHashMap<>();
    choice.rows().forEach(r -> alike.computeIfAbsent(key.apply(r), k -> new ArrayList<>()).add(r));
    return alike;
  }
}
