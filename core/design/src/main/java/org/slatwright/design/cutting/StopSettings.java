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

/** In which order the stop block is set: the parts first, then the spare pieces. */
final class StopSettings {

  private StopSettings() {}

  static List<StopSetting> of(List<CutBoard> boards) {
    return Stream.concat(of(boards, false), of(boards, true)).toList();
  }

  /** One for each length, the longest first. */
  private static Stream<StopSetting> of(List<CutBoard> boards, boolean spare) {
    return boards.stream()
        .flatMap(board -> board.cuts().stream())
        .filter(cut -> cut.spare() == spare)
        .map(Cut::length)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .map(length -> new StopSetting(length, works(boards, length, spare)));
  }

  private static List<Work> works(List<CutBoard> boards, Length length, boolean spare) {
    return boards.stream()
        .flatMap(board -> board.marks().stream().flatMap(mark -> works(mark, board, length, spare)))
        .toList();
  }

  private static Stream<Work> works(String mark, CutBoard board, Length length, boolean spare) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    board.cuts().stream()
        .filter(cut -> cut.spare() == spare && cut.length().equals(length))
        .forEach(cut -> pieces.merge(cut.mark(), 1, Integer::sum));
    return pieces.entrySet().stream()
        .map(piece -> new Work(mark, piece.getKey(), piece.getValue()));
  }
}
