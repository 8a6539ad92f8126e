package org.slatwright.design.cutting;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.StopSetting.Work;

/**
 * In which order the stop block is set, once for each length. There cannot be fewer settings,
 * whichever way the boards are cut, since every length is cut on some board: so of plans that cost
 * the same none need be sought that has the fewest.
 */
final class StopSettings {

  private StopSettings() {}

  /** The lengths of parts first, the longest first, then those that only spare pieces have. */
  static List<StopSetting> of(List<CutBoard> boards) {
    return Stream.concat(lengths(boards, false), lengths(boards, true))
        .distinct()
        .map(length -> new StopSetting(length, works(boards, length)))
        .toList();
  }

  private static Stream<Length> lengths(List<CutBoard> boards, boolean spare) {
    return boards.stream()
        .flatMap(board -> board.cuts().stream())
        .filter(cut -> cut.spare() == spare)
        .map(Cut::length)
        .sorted(Comparator.reverseOrder());
  }

  private static List<Work> works(List<CutBoard> boards, Length length) {
    return boards.stream()
        .flatMap(board -> board.marks().stream().flatMap(mark -> works(mark, board, length)))
        .toList();
  }

  private static Stream<Work> works(String mark, CutBoard board, Length length) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    board.cuts().stream()
        .filter(cut -> cut.length().equals(length))
        .forEach(cut -> pieces.merge(cut.mark(), 1, Integer::sum));
    return pieces.entrySet().stream()
        .map(piece -> new Work(mark, piece.getKey(), piece.getValue()));
  }
}
