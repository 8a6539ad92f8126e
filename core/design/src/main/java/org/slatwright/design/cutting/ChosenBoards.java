package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.design.boards.Board;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.boards.BoardChoice.Slat;
import org.slatwright.design.boards.BoardChoice.Source;
import org.slatwright.design.cutting.Need.Shortfall;

/** Slats as wide as their boards: each lies where it was chosen. */
record ChosenBoards(BoardChoice choice, List<Board> boards, Need need, Saw saw) {

  private static final String PROVED =
      "slats keep the width of their boards: the lower shelves first, as few ripped as can be";

  private static final String FOUND =
      "slats keep the width of their boards: the best choice found, not proved the best";

  LaidTimber laid() {
    Map<Integer, List<Cut>> cuts = new TreeMap<>();
    Map<String, Integer> missing = new TreeMap<>();
    for (BoardChoice.Row row : choice.rows()) {
      for (Slat slat : row.slats()) {
        slat.source()
            .ifPresentOrElse(
                source ->
                    cuts.computeIfAbsent(source.board(), board -> new ArrayList<>())
                        .add(cut(slat, source)),
                () -> missing.merge(part(slat).mark(), 1, Integer::sum));
      }
    }
    List<Layout> layouts = new ArrayList<>();
    cuts.forEach((board, pieces) -> layouts.add(layout(boards.get(board), pieces)));
    return new LaidTimber(
        need, saw, layouts, shortfalls(missing), choice.proved() ? PROVED : FOUND);
  }

  /** What lies on each shelf. */
  List<ShelfSlats> shelves() {
    return choice.rows().stream()
        .map(
            row ->
                new ShelfSlats(
                    row.need().shelf() + 1,
                    row.need().run() + 1,
                    row.slats().stream().map(slat -> part(slat).mark()).toList(),
                    row.gap(),
                    row.isFilled()))
        .toList();
  }

  private List<Shortfall> shortfalls(Map<String, Integer> missing) {
    return need.parts().stream()
        .filter(part -> missing.containsKey(part.mark()))
        .map(part -> new Shortfall(part, missing.get(part.mark())))
        .toList();
  }

  private Part part(Slat slat) {
    Shape bar = new Shape.Bar(slat.length(), slat.width(), slat.thickness());
    return need.parts().stream().filter(part -> part.shape().equals(bar)).findFirst().orElseThrow();
  }

  private Cut cut(Slat slat, Source source) {
    return new Cut(
        part(slat).mark(), false, source.from(), slat.length(), source.across(), slat.width());
  }

  /** Behind the last piece of each clear stretch, and beside ripped ones, is what is over. */
  private Layout layout(Board board, List<Cut> cuts) {
    List<Lane> lanes = new ArrayList<>();
    for (Board.Stretch clear : board.clear()) {
      Length next = clear.from();
      for (List<Cut> column : columns(cuts, clear)) {
        Length end = column.stream().map(ChosenBoards::end).reduce(Length::max).orElseThrow();
        addBeside(board, column, end, lanes);
        next = end.plus(saw.kerf());
      }
      lanes.add(
          Ripping.lane(
              board, new Board.Stretch(next, clear.to()), Length.ZERO, board.width(), saw));
    }
    return new Layout(Blank.of(board, lanes), cuts, saw.kerf());
  }

  private void addBeside(Board board, List<Cut> column, Length end, List<Lane> lanes) {
    Length edge =
        column.stream()
            .map(cut -> cut.across().plus(cut.width()))
            .reduce(Length::max)
            .orElseThrow();
    Length across = edge.plus(saw.kerf());
    if (across.isLessThan(board.width())) {
      Length from = column.stream().map(Cut::from).reduce(Length::min).orElseThrow();
      lanes.add(new Lane(from, end, end, across, board.width().minus(across)));
    }
  }

  /** The pieces of a stretch, those that lie beside each other together. */
  private static Collection<List<Cut>> columns(List<Cut> cuts, Board.Stretch clear) {
    return cuts.stream()
        .filter(cut -> !cut.from().isLessThan(clear.from()) && !end(cut).isMoreThan(clear.to()))
        .sorted(Comparator.comparing(Cut::from))
        .collect(Collectors.groupingBy(Cut::from, TreeMap::new, Collectors.toList()))
        .values();
  }

  private static Length end(Cut cut) {
    return cut.from().plus(cut.length());
  }
}
