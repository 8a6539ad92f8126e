package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;

/**
 * What there is to choose from.
 *
 * @param lengths of slats, each once, the longest first
 * @param kinds of boards, the widest first, then the thickest
 * @param fit of rows
 * @param mostSlats of a row, the count where the maker says it
 * @param narrowest that a slat of these boards can be, in nm
 */
record Stock(List<Length> lengths, List<Kind> kinds, RowFit fit, int mostSlats, long narrowest) {

  /** What makes boards alike. */
  private record Section(Length width, Length thickness) implements Comparable<Section> {
    static Section of(Board board) {
      return new Section(board.width(), board.thickness());
    }

    @Override
    public int compareTo(Section other) {
      return Comparator.comparing(Section::width)
          .thenComparing(Section::thickness)
          .reversed()
          .compare(this, other);
    }
  }

  static Stock of(List<Board> boards, List<RowNeed> needs, RowRules rules) {
    List<Length> lengths =
        needs.stream().map(RowNeed::length).distinct().sorted(Comparator.reverseOrder()).toList();
    RowFit fit = new RowFit(rules);
    long narrowest = BoardChooser.narrowest(boards).nanometres();
    int inRow = mostSlats(fit, narrowest);
    List<Integer> useful =
        lengths.stream()
            .map(each -> inRow * (int) needs.stream().filter(n -> n.length().equals(each)).count())
            .toList();
    Map<Section, List<Integer>> alike = new TreeMap<>();
    for (int i = 0; i < boards.size(); i++) {
      alike.computeIfAbsent(Section.of(boards.get(i)), section -> new ArrayList<>()).add(i);
    }
    List<Long> cutTo = lengths.stream().map(Length::nanometres).toList();
    List<Kind> kinds = new ArrayList<>();
    alike.forEach(
        (section, of) -> {
          List<List<BoardCut>> cuts =
              of.stream()
                  .map(b -> BoardCut.of(boards.get(b), cutTo, useful, rules.kerf().nanometres()))
                  .toList();
          kinds.add(
              new Kind(
                  section.width().nanometres(),
                  section.thickness().nanometres(),
                  of.stream().mapToInt(b -> b).toArray(),
                  cuts,
                  mostOf(cuts, useful)));
        });
    return new Stock(lengths, kinds, fit, inRow, narrowest);
  }

  /** As many as the maker says, or else as many as lie on the rail. */
  private static int mostSlats(RowFit fit, long narrowest) {
    return fit.rules().count().orElseGet(() -> asManyAsFit(fit, narrowest));
  }

  private static int asManyAsFit(RowFit fit, long narrowest) {
    int count = 1;
    while ((count + 1) * narrowest <= fit.most(count + 1)) {
      count++;
    }
    return count;
  }

  private static int[] mostOf(List<List<BoardCut>> cuts, List<Integer> useful) {
    return IntStream.range(0, useful.size())
        .map(
            length ->
                Math.min(
                    useful.get(length),
                    cuts.stream().mapToInt(board -> mostOf(board, length)).sum()))
        .toArray();
  }

  private static int mostOf(List<BoardCut> board, int length) {
    return board.stream().mapToInt(cut -> cut.counts().get(length)).max().orElse(0);
  }

  /** The width and thickness that most boards have, the widest of several. */
  Kind commonest() {
    return kinds.stream()
        .reduce((one, other) -> other.boardCount() > one.boardCount() ? other : one)
        .orElseThrow(() -> new IllegalArgumentException("there must be a board"));
  }

  long widest() {
    return kinds.get(0).width();
  }
}
