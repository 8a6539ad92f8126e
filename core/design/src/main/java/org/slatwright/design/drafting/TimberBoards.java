package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/**
 * The boards of one timber below each other, under a heading and what to know of all of them.
 *
 * @param heading in lines
 * @param details lines below the heading
 */
record TimberBoards(List<String> heading, List<String> details, List<BoardDrawing> boards)
    implements TextBlock {

  private static final double HEADING = 5;
  private static final double LETTERING = 2.5;
  private static final double GAP = 3.5;

  TimberBoards {
    heading = List.copyOf(heading);
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
    figures.addAll(Paragraph.draw(heading, left, top, HEADING));
    figures.addAll(Paragraph.draw(details, left, top - headingHeight(), LETTERING));
    double y = top - top();
    for (BoardDrawing board : boards) {
      figures.add(board.figure(left, y - GAP));
      y -= GAP + board.height();
    }
    return figures;
  }

  private double top() {
    return headingHeight() + Paragraph.heightOf(details.size(), LETTERING);
  }

  private double headingHeight() {
    return HEADING * 0.15 + Paragraph.heightOf(heading.size(), HEADING);
  }
}
