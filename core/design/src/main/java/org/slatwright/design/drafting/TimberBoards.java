package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/**
 * The boards of one timber below each other, under a heading and what to know of all of them.
 *
 * @param details lines below the heading
 */
record TimberBoards(String heading, List<String> details, List<BoardDrawing> boards)
    implements TextBlock {

  private static final double HEADING = 5;
  private static final double LETTERING = 2.5;
  private static final double GAP = 3.5;

  TimberBoards {
    details = List.copyOf(details);
    boards = List.copyOf(boards);
  }

  @Override
  public double height() {
    return top() + boards.stream().mapToDouble(board -> GAP + board.height()).sum();
  }

  @Override
  public List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Paragraph.text(left, top - HEADING, HEADING, heading, Figure.Align.START));
    figures.addAll(Paragraph.draw(details, left, top - HEADING * 1.5, LETTERING));
    double y = top - top();
    for (BoardDrawing board : boards) {
      figures.add(board.figure(left, y - GAP));
      y -= GAP + board.height();
    }
    return figures;
  }

  private double top() {
    return HEADING * 1.5 + Paragraph.heightOf(details.size(), LETTERING);
  }
}
