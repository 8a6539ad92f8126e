package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.design.cutting.Need.Shortfall;

/** Gives the boards of one timber their marks, and puts them and their cuts in order. */
final class CutTimber {

  /** By the longest piece, as the stop block goes; then by the length of the board. */
  private static final Comparator<CutBoard> IN_ORDER_OF_CUTTING =
      Comparator.comparing(CutTimber::longest).thenComparing(CutBoard::length).reversed();

  private CutTimber() {}

  static TimberCuts of(LaidTimber laid, Unit unit) {
    List<CutBoard> boards = boards(laid, unit);
    return new TimberCuts(
        laid.need().stock(),
        laid.need().timber(),
        laid.saw().kerf(),
        laid.saw().endTrim(),
        boards,
        StopSettings.of(boards),
        laid.quality(),
        laid.missing().stream().map(CutTimber::missing).toList());
  }

  private static MissingPieces missing(Shortfall missing) {
    Part part = missing.part();
    return new MissingPieces(
        part.mark(),
        missing.count(),
        part.shape().length(),
        part.shape().width(),
        part.shape().thickness());
  }

  private static List<CutBoard> boards(LaidTimber laid, Unit unit) {
    Offcuts offcuts = new Offcuts(laid.need(), laid.saw(), unit);
    Map<CutBoard, List<Optional<String>>> alike = new LinkedHashMap<>();
    for (Layout layout : laid.layouts()) {
      CutBoard unmarked = layout.blank().cut(layout.cuts(), offcuts.of(layout));
      alike.computeIfAbsent(unmarked, board -> new ArrayList<>()).add(layout.blank().mark());
    }
    List<CutBoard> boards = new ArrayList<>();
    int[] last = {0};
    alike.keySet().stream()
        .sorted(IN_ORDER_OF_CUTTING)
        .forEach(
            board ->
                boards.add(
                    board.marked(
                        alike.get(board).stream()
                            .map(
                                mark ->
                                    mark.orElseGet(() -> letter(laid.need().stock()) + ++last[0]))
                            .toList())));
    return boards;
  }

  /** None that a part (U, R, S, D), a reclaimed board (B) or a spare piece (X) is marked with. */
  private static String letter(Stock stock) {
    return switch (stock) {
      case FRAME -> "F";
      case RAIL -> "L";
      case SLAT -> "T";
      case DOWEL_ROD -> "W";
    };
  }

  private static Length longest(CutBoard board) {
    return board.cuts().stream().map(CutBoard.Cut::length).reduce(Length::max).orElseThrow();
  }
}
