package org.slatwright.testkit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.api.plan.StopSetting;

/**
 * Cuts sample boards as they are told.
 *
 * @param kerf between one piece and the next
 * @param endTrim before the first piece
 */
record SampleSaw(Length kerf, Length endTrim) {

  /** A piece to cut, as wide as its board. */
  record Wanted(String mark, boolean spare, Length length) {}

  /** The board with the pieces side by side from its first end on, and one offcut of the rest. */
  CutBoard cut(CutBoard uncut, List<Wanted> pieces, Optional<String> gives) {
    List<Cut> cuts = new ArrayList<>();
    Length from = endTrim;
    for (Wanted piece : pieces) {
      cuts.add(
          new Cut(piece.mark(), piece.spare(), from, piece.length(), Length.ZERO, uncut.width()));
      from = from.plus(piece.length()).plus(kerf);
    }
    Offcut rest =
        new Offcut(
            from,
            uncut.length().minus(from),
            Length.ZERO,
            uncut.width(),
            gives.isPresent(),
            gives.orElse(""));
    return new CutBoard(
        uncut.marks(),
        uncut.source(),
        uncut.length(),
        uncut.width(),
        uncut.thickness(),
        uncut.price(),
        cuts,
        uncut.avoid(),
        List.of(rest));
  }

  /** One setting for each length, the longest first. */
  static List<StopSetting> settings(List<CutBoard> boards) {
    return boards.stream()
        .flatMap(board -> board.cuts().stream().map(Cut::length))
        .distinct()
        .sorted(Comparator.reverseOrder())
        .map(length -> new StopSetting(length, works(boards, length)))
        .toList();
  }

  private static List<StopSetting.Work> works(List<CutBoard> boards, Length length) {
    List<StopSetting.Work> works = new ArrayList<>();
    for (CutBoard board : boards) {
      List<String> pieces =
          board.cuts().stream().filter(cut -> cut.length().equals(length)).map(Cut::mark).toList();
      for (String mark : board.marks()) {
        pieces.stream()
            .distinct()
            .map(piece -> new StopSetting.Work(mark, piece, count(pieces, piece)))
            .forEach(works::add);
      }
    }
    return works;
  }

  private static int count(List<String> pieces, String piece) {
    return (int) pieces.stream().filter(piece::equals).count();
  }
}
