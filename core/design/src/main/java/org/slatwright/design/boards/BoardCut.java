package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * One way to cross-cut a board.
 *
 * @param counts of slats of each length
 * @param wasted length of the board, in nm; 0 when it is not cut at all
 * @param stretches how many slats of each length come from each clear stretch
 */
record BoardCut(List<Integer> counts, long wasted, List<List<Integer>> stretches) {

  boolean isUncut() {
    return counts.stream().allMatch(count -> count == 0);
  }

  private BoardCut and(BoardCut other) {
    List<List<Integer>> both = new ArrayList<>(stretches);
    both.addAll(other.stretches);
    return new BoardCut(sum(counts, other.counts), wasted + other.wasted, List.copyOf(both));
  }

  private static List<Integer> sum(List<Integer> one, List<Integer> other) {
    return IntStream.range(0, one.size()).mapToObj(i -> one.get(i) + other.get(i)).toList();
  }

  /**
   * Every useful way: for each number of slats of each length that the board gives, the one that
   * wastes least. What is avoided or squared off is wasted too, once the board is cut into.
   *
   * @param lengths of slats, in nm
   * @param most slats of each length that could be of use
   */
  static List<BoardCut> of(Board board, List<Long> lengths, List<Integer> most, long kerf) {
    long clear = board.clear().stream().mapToLong(stretch -> stretch.length().nanometres()).sum();
    List<Integer> none = lengths.stream().map(length -> 0).toList();
    List<BoardCut> all =
        List.of(new BoardCut(none, board.length().nanometres() - clear, List.of()));
    for (Board.Stretch stretch : board.clear()) {
      all = join(all, ofStretch(stretch.length().nanometres(), lengths, most, kerf), most);
    }
    return all.stream()
        .map(cut -> cut.isUncut() ? new BoardCut(none, 0, cut.stretches()) : cut)
        .toList();
  }

  private static List<BoardCut> join(
      List<BoardCut> before, List<BoardCut> more, List<Integer> most) {
    Map<List<Integer>, BoardCut> best = new LinkedHashMap<>();
    for (BoardCut one : before) {
      for (BoardCut other : more) {
        BoardCut both = one.and(other);
        if (isWithin(both.counts(), most)) {
          best.merge(both.counts(), both, (a, b) -> b.wasted() < a.wasted() ? b : a);
        }
      }
    }
    return List.copyOf(best.values());
  }

  private static boolean isWithin(List<Integer> counts, List<Integer> most) {
    return IntStream.range(0, counts.size()).allMatch(i -> counts.get(i) <= most.get(i));
  }

  private static List<BoardCut> ofStretch(
      long stretch, List<Long> lengths, List<Integer> most, long kerf) {
    List<List<Integer>> counts = new ArrayList<>(List.of(List.of()));
    for (int i = 0; i < lengths.size(); i++) {
      long fit = (stretch + kerf) / (lengths.get(i) + kerf);
      counts = withOneMore(counts, (int) Math.min(most.get(i), fit));
    }
    long shortest = lengths.stream().mapToLong(length -> length).min().orElse(0);
    return counts.stream()
        .filter(each -> taken(each, lengths, kerf) <= stretch + kerf)
        .map(
            each ->
                new BoardCut(each, wasted(stretch, each, lengths, kerf, shortest), List.of(each)))
        .toList();
  }

  private static List<List<Integer>> withOneMore(List<List<Integer>> counts, int most) {
    return counts.stream()
        .flatMap(each -> IntStream.rangeClosed(0, most).mapToObj(count -> append(each, count)))
        .toList();
  }

  private static List<Integer> append(List<Integer> to, int count) {
    List<Integer> longer = new ArrayList<>(to);
    longer.add(count);
    return List.copyOf(longer);
  }

  /** By the slats, and the kerf after each. */
  private static long taken(List<Integer> counts, List<Long> lengths, long kerf) {
    return IntStream.range(0, counts.size())
        .mapToLong(i -> counts.get(i) * (lengths.get(i) + kerf))
        .sum();
  }

  private static long wasted(
      long stretch, List<Integer> counts, List<Long> lengths, long kerf, long shortest) {
    long rest = stretch - taken(counts, lengths, kerf);
    return stretch - taken(counts, lengths, 0) - (rest >= shortest ? rest : 0);
  }
}
