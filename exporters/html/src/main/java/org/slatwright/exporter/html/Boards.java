package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.TimberCuts;

/** How each board is cut, and what becomes of its pieces. */
final class Boards {

  private final Plan plan;

  private Boards(Plan plan) {
    this.plan = plan;
  }

  static Section of(Plan plan) {
    Boards boards = new Boards(plan);
    List<Node> content = new ArrayList<>();
    plan.cutting().timbers().forEach(timber -> content.addAll(boards.timber(timber)));
    content.addAll(boards.spares());
    content.addAll(boards.shelves());
    return new Section("boards", "Cutting plan", content);
  }

  private List<Node> timber(TimberCuts timber) {
    List<Node> content = new ArrayList<>();
    content.add(Element.of("h3", timber.timber()));
    content.add(losses(timber));
    if (!timber.boards().isEmpty()) {
      HtmlTable table =
          new HtmlTable(
              "Boards of " + timber.timber() + ", in the order to cut them",
              List.of(
                  HtmlTable.Column.ticks(),
                  HtmlTable.Column.words("Board"),
                  HtmlTable.Column.lengths("Length"),
                  HtmlTable.Column.wordsIn("Cuts from the first end on"),
                  HtmlTable.Column.wordsIn("What is left")),
              1,
              timber.boards().stream().map(Boards::row).toList());
      content.add(table.node());
    }
    timber.missing().forEach(pieces -> content.add(missing(pieces)));
    return content;
  }

  private static Node losses(TimberCuts timber) {
    return Element.of(
        "p",
        Node.text("Kerf "),
        Measures.length(timber.kerf()),
        Node.text(", "),
        Measures.length(timber.endTrim()),
        Node.text(" squared off each end. " + capital(timber.quality()) + "."));
  }

  private static String capital(String sentence) {
    return sentence.isEmpty()
        ? ""
        : Character.toString(Character.toUpperCase(sentence.codePointAt(0)))
            + sentence.substring(sentence.offsetByCodePoints(0, 1));
  }

  private static List<Node> row(CutBoard board) {
    String marks = String.join(", ", board.marks());
    return List.of(
        new Tick("board-" + String.join("-", board.marks())).alone("Cut: board " + marks),
        Element.of(
            "span",
            Element.of("b", marks).styled("mark"),
            Element.of("span", board.source().word()).styled("note")),
        Measures.number(board.length()),
        BoardCuts.cuts(board),
        BoardCuts.rest(board));
  }

  private static Node missing(MissingPieces pieces) {
    return Element.of(
            "p",
            Node.text("No board is left for " + pieces.count() + " × " + pieces.mark() + ", "),
            Measures.length(pieces.length()),
            Node.text(" of "),
            Measures.numbers(pieces.thickness(), pieces.width()),
            Node.text(" "),
            Measures.unit(),
            Node.text("."))
        .styled("missing");
  }

  private List<Node> spares() {
    List<SparePiece> spares = plan.cutting().spares();
    HtmlTable table =
        new HtmlTable(
            "Spare pieces, cut for the build and not kept by the rack",
            List.of(
                HtmlTable.Column.words("Piece"),
                HtmlTable.Column.lengths("Length"),
                HtmlTable.Column.numbers("Wanted"),
                HtmlTable.Column.numbers("From offcuts"),
                HtmlTable.Column.words("Use")),
            0,
            spares.stream().map(Boards::row).toList());
    return spares.isEmpty() ? List.of() : List.of(Element.of("h3", "Spare pieces"), table.node());
  }

  private static List<Node> row(SparePiece spare) {
    return List.of(
        Element.of(
            "span",
            Element.of("b", spare.mark()).styled("mark"),
            Node.text(" " + spare.name()),
            Element.of("span", spare.stock().word()).styled("note")),
        Measures.number(spare.length()),
        Node.count(spare.wanted()),
        Node.count(spare.fromOffcuts()),
        Node.text(spare.use()));
  }

  private List<Node> shelves() {
    List<ShelfSlats> shelves = plan.cutting().shelves();
    HtmlTable table =
        new HtmlTable(
            "Slats of each shelf, shelves counted from the floor",
            List.of(
                HtmlTable.Column.words("Shelf"),
                HtmlTable.Column.words("Slats from the front back"),
                HtmlTable.Column.lengths("Gaps")),
            0,
            shelves.stream().map(Boards::row).toList());
    return shelves.isEmpty()
        ? List.of()
        : List.of(Element.of("h3", "Slats of each shelf"), table.node());
  }

  private static List<Node> row(ShelfSlats shelf) {
    return List.of(
        Node.text(shelf.shelf() + (shelf.run() > 1 ? ", bay " + shelf.run() : "")),
        Node.text(
            String.join(", ", shelf.marks()) + (shelf.filled() ? "" : " (slats are missing)")),
        Measures.number(shelf.gap()));
  }
}
