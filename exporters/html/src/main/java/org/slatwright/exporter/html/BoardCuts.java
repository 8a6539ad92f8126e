package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.api.plan.CutBoard.Stretch;

/** The pieces of one board in a few words: equal ones that follow one another are counted. */
final class BoardCuts {

  private BoardCuts() {}

  /** What is cut from it, in order, and where nothing may be. */
  static Node cuts(CutBoard board) {
    List<Element> said = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= board.cuts().size(); to++) {
      if (to == board.cuts().size() || !isAlike(board.cuts().get(from), board.cuts().get(to))) {
        said.add(run(board, board.cuts().get(from), to - from));
        from = to;
      }
    }
    board.avoid().stream().map(BoardCuts::avoided).forEach(said::add);
    return Element.of("ul", said).styled("cuts");
  }

  /** What is left of it. */
  static Node rest(CutBoard board) {
    List<Element> rests = board.offcuts().stream().map(rest -> rest(board, rest)).toList();
    return rests.isEmpty() ? Node.text("nothing") : Element.of("ul", rests).styled("cuts");
  }

  private static boolean isAlike(Cut first, Cut other) {
    return first.mark().equals(other.mark())
        && first.length().equals(other.length())
        && first.width().equals(other.width())
        && first.across().equals(other.across());
  }

  private static Element run(CutBoard board, Cut cut, int count) {
    List<Node> said = new ArrayList<>();
    said.add(Node.text(count + " × "));
    said.add(Element.of("b", cut.mark()).styled("mark"));
    said.add(Node.text(" "));
    said.addAll(size(board, cut.length(), cut.width()));
    return Element.of("li", said);
  }

  /** The width is told only where it is not the board's. */
  private static List<Node> size(CutBoard board, Length length, Length width) {
    return width.equals(board.width())
        ? List.of(Measures.number(length))
        : List.of(Measures.numbers(length, width), Node.text(" wide"));
  }

  private static Element rest(CutBoard board, Offcut offcut) {
    List<Node> said = new ArrayList<>(size(board, offcut.length(), offcut.width()));
    if (offcut.keep()) {
      said.add(Node.text(", keep"));
    }
    if (!offcut.gives().isEmpty()) {
      said.add(Node.text(", gives " + offcut.gives()));
    }
    return Element.of("li", said);
  }

  private static Element avoided(Stretch stretch) {
    return Element.of(
        "li",
        Node.text("avoid from "),
        Measures.number(stretch.from()),
        Node.text(" to "),
        Measures.number(stretch.to()));
  }
}
