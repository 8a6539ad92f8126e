package org.slatwright.exporter.csv;

import static org.slatwright.exporter.csv.Cells.count;
import static org.slatwright.exporter.csv.Cells.none;
import static org.slatwright.exporter.csv.Cells.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;

/** What to buy, what is cut from which board, and what lies where. */
final class CuttingTables {

  private final CuttingPlan cutting;
  private final Cells cells;
  private final Names names;

  CuttingTables(Plan plan, Cells cells) {
    this.cutting = plan.cutting();
    this.cells = cells;
    this.names = new Names(plan);
  }

  /** In the order that they are needed; those that would be empty are left out. */
  Stream<Table> all() {
    return Stream.of(
            buyingList(), cuttingPlan(), stopSettings(), sparePieces(), missingPieces(), slats())
        .filter(table -> !table.rows().isEmpty());
  }

  private Table buyingList() {
    List<String> header =
        List.of("what", "quantity", cells.withUnit("length"), "price", "cost", "note");
    List<List<Cell>> rows = new ArrayList<>();
    cutting.buying().forEach(purchase -> rows.add(purchaseRow(purchase)));
    cutting
        .cost()
        .map(cost -> List.of(text("total"), none(), none(), none(), Cells.money(cost), none()))
        .ifPresent(rows::add);
    return new Table(Plan.BUYING_LIST, header, rows);
  }

  private List<Cell> purchaseRow(Purchase purchase) {
    return List.of(
        text(purchase.what()),
        purchase.quantity().map(Cells::count).orElse(none()),
        purchase.length().map(cells::length).orElse(none()),
        purchase.price().map(Cells::money).orElse(none()),
        purchase.cost().map(Cells::money).orElse(none()),
        text(purchase.note()));
  }

  private Table cuttingPlan() {
    List<String> header =
        List.of(
            "timber",
            "boards",
            "boards alike",
            "source",
            cells.withUnit("board length"),
            cells.withUnit("board width"),
            cells.withUnit("board thickness"),
            "kind",
            "order",
            "mark",
            "part",
            cells.withUnit("from"),
            cells.withUnit("length"),
            cells.withUnit("across"),
            cells.withUnit("width"),
            "note");
    List<List<Cell>> rows =
        cutting.timbers().stream()
            .flatMap(timber -> timber.boards().stream().flatMap(board -> boardRows(timber, board)))
            .toList();
    return new Table(Plan.CUTTING_PLAN, header, rows);
  }

  private Stream<List<Cell>> boardRows(TimberCuts timber, CutBoard board) {
    List<Cell> named =
        List.of(
            text(timber.timber()),
            text(String.join(" ", board.marks())),
            count(board.marks().size()),
            text(board.source().word()),
            cells.length(board.length()),
            cells.length(board.width()),
            cells.length(board.thickness()));
    return Stream.of(cutRows(board), offcutRows(board), avoidRows(board))
        .flatMap(rows -> rows)
        .map(row -> Stream.concat(named.stream(), row.stream()).toList());
  }

  private Stream<List<Cell>> cutRows(CutBoard board) {
    List<List<Cell>> rows = new ArrayList<>();
    for (CutBoard.Cut cut : board.cuts()) {
      List<Cell> what =
          List.of(
              text(cut.spare() ? "spare" : "piece"),
              count(rows.size() + 1),
              text(cut.mark()),
              text(names.of(cut)));
      rows.add(row(what, cut.from(), cut.length(), cut.across(), cut.width(), ""));
    }
    return rows.stream();
  }

  private Stream<List<Cell>> offcutRows(CutBoard board) {
    return board.offcuts().stream()
        .map(
            offcut ->
                row(
                    unmarked("offcut"),
                    offcut.from(),
                    offcut.length(),
                    offcut.across(),
                    offcut.width(),
                    note(offcut)));
  }

  private Stream<List<Cell>> avoidRows(CutBoard board) {
    return board.avoid().stream()
        .map(
            stretch ->
                row(
                    unmarked("avoid"),
                    stretch.from(),
                    stretch.to().minus(stretch.from()),
                    Length.ZERO,
                    board.width(),
                    ""));
  }

  private static List<Cell> unmarked(String kind) {
    return List.of(text(kind), none(), none(), none());
  }

  private List<Cell> row(
      List<Cell> what, Length from, Length length, Length across, Length width, String note) {
    Stream<Cell> place = Stream.of(from, length, across, width).map(cells::length);
    return Stream.of(what.stream(), place, Stream.of(text(note))).flatMap(part -> part).toList();
  }

  private static String note(CutBoard.Offcut offcut) {
    String keep = offcut.keep() ? "keep" : "";
    String gives = offcut.gives().isEmpty() ? "" : "gives " + offcut.gives();
    return Stream.of(keep, gives).filter(word -> !word.isEmpty()).collect(Collectors.joining("; "));
  }

  private Table stopSettings() {
    List<String> header =
        List.of("step", "timber", cells.withUnit("setting"), "board", "piece", "count");
    List<List<Cell>> rows = new ArrayList<>();
    int step = 0;
    for (TimberCuts timber : cutting.timbers()) {
      for (StopSetting setting : timber.settings()) {
        step++;
        for (StopSetting.Work work : setting.works()) {
          rows.add(
              List.of(
                  count(step),
                  text(timber.timber()),
                  cells.length(setting.length()),
                  text(work.board()),
                  text(work.piece()),
                  count(work.count())));
        }
      }
    }
    return new Table(Plan.STOP_SETTINGS, header, rows);
  }

  private Table sparePieces() {
    List<String> header =
        List.of("mark", "name", "use", "stock", cells.withUnit("length"), "wanted", "from offcuts");
    return new Table(
        Plan.SPARE_PIECES, header, cutting.spares().stream().map(this::spareRow).toList());
  }

  private List<Cell> spareRow(SparePiece spare) {
    return List.of(
        text(spare.mark()),
        text(spare.name()),
        text(spare.use()),
        text(spare.stock().word()),
        cells.length(spare.length()),
        count(spare.wanted()),
        count(spare.fromOffcuts()));
  }

  private Table missingPieces() {
    List<String> header =
        List.of(
            "mark",
            "part",
            "count",
            cells.withUnit("length"),
            cells.withUnit("width"),
            cells.withUnit("thickness"),
            "timber");
    List<List<Cell>> rows =
        cutting.timbers().stream()
            .flatMap(timber -> timber.missing().stream().map(pieces -> missingRow(pieces, timber)))
            .toList();
    return new Table(Plan.MISSING_PIECES, header, rows);
  }

  private List<Cell> missingRow(MissingPieces pieces, TimberCuts timber) {
    return List.of(
        text(pieces.mark()),
        text(names.ofPart(pieces.mark())),
        count(pieces.count()),
        cells.length(pieces.length()),
        cells.length(pieces.width()),
        cells.length(pieces.thickness()),
        text(timber.timber()));
  }

  private Table slats() {
    List<String> header = List.of("shelf", "run", "order", "mark", cells.withUnit("gap"), "filled");
    List<List<Cell>> rows = cutting.shelves().stream().flatMap(this::slatRows).toList();
    return new Table(Plan.SHELF_SLATS, header, rows);
  }

  /** One a slat, from the front back. */
  private Stream<List<Cell>> slatRows(ShelfSlats shelf) {
    List<List<Cell>> rows = new ArrayList<>();
    for (String mark : shelf.marks()) {
      rows.add(
          List.of(
              count(shelf.shelf()),
              count(shelf.run()),
              count(rows.size() + 1),
              text(mark),
              cells.length(shelf.gap()),
              Cells.yesOrNo(shelf.filled())));
    }
    return rows.stream();
  }

  /** What the marks on the pieces stand for. */
  private record Names(Plan plan) {

    String of(CutBoard.Cut cut) {
      return cut.spare() ? ofSpare(cut.mark()) : ofPart(cut.mark());
    }

    /** Empty for a mark that the rack does not have. */
    String ofPart(String mark) {
      return plan.assembly().parts().stream()
          .filter(part -> part.mark().equals(mark))
          .map(Part::name)
          .findFirst()
          .orElse("");
    }

    private String ofSpare(String mark) {
      return plan.cutting().spares().stream()
          .filter(spare -> spare.mark().equals(mark))
          .map(SparePiece::name)
          .findFirst()
          .orElse("");
    }
  }
}
