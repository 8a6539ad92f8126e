package org.slatwright.design.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.Board;

/**
 * How a board is ripped into strips of one width, from end to end, before they are cut off; beside
 * the last strip from which a piece is cut it stays whole.
 */
final class Ripping {

  private Ripping() {}

  /** The clear stretches of each strip, and what is left beside the last strip. */
  static List<Lane> lanes(Board board, Length width, Saw saw) {
    List<Lane> lanes = new ArrayList<>();
    Length across = Length.ZERO;
    while (!board.width().minus(across).isLessThan(width)) {
      for (Board.Stretch clear : board.clear()) {
        lanes.add(lane(board, clear, across, width, saw));
      }
      across = across.plus(width).plus(saw.kerf());
    }
    Length beside = board.width().minus(across);
    if (beside.isPositive() && across.isPositive()) {
      lanes.add(new Lane(Length.ZERO, board.length(), board.length(), across, beside));
    }
    return lanes;
  }

  /**
   * What is over of all strips, from the fence on. Between two of which nothing is cut nobody saws:
   * they stay one, and so does what is beside the last strip.
   */
  static List<Run> rests(List<Run> lanes) {
    Deque<List<Run>> rests = new ArrayDeque<>();
    for (List<Run> strip : strips(lanes)) {
      if (isWhole(strip) && !rests.isEmpty() && isWhole(rests.getLast())) {
        Lane beside = strip.get(0).lane();
        rests.add(rests.removeLast().stream().map(run -> run.widenedTo(beside)).toList());
      } else {
        rests.add(strip);
      }
    }
    return rests.stream().flatMap(List::stream).toList();
  }

  private static Collection<List<Run>> strips(List<Run> lanes) {
    return lanes.stream()
        .collect(
            Collectors.groupingBy(run -> run.lane().across(), TreeMap::new, Collectors.toList()))
        .values();
  }

  private static boolean isWhole(List<Run> strip) {
    return strip.stream().noneMatch(Run::isTouched);
  }

  /** The last stretch runs on to the end that is not squared. */
  static Lane lane(Board board, Board.Stretch clear, Length across, Length width, Saw saw) {
    boolean last = clear.to().equals(board.length().minus(saw.endTrim()));
    Length tail = last ? board.length() : clear.to();
    return new Lane(clear.from(), clear.to(), tail, across, width);
  }
}
