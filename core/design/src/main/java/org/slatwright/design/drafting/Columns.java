package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/** Paragraphs under a heading, set in columns of a comfortable width. */
final class Columns implements TextBlock {

  private static final double HEADING = 3.5;
  private static final double LETTERING = 2.5;
  private static final double BETWEEN = 1.4;
  private static final double GUTTER = 6;
  private static final double LEAST_COLUMN = 80;

  private final String heading;
  private final double between;
  private final double columnWidth;
  private final List<List<List<String>>> columns;

  /** To fill {@code width} mm on paper, one column or more. */
  Columns(String heading, List<String> paragraphs, double width) {
    this(heading, paragraphs, width, BETWEEN);
  }

  /** The same, with {@code between} mm more from one paragraph to the next. */
  Columns(String heading, List<String> paragraphs, double width, double between) {
    this.heading = heading;
    this.between = between;
    int count = Math.max(1, (int) ((width + GUTTER) / (LEAST_COLUMN + GUTTER)));
    this.columnWidth = (width - (count - 1) * GUTTER) / count;
    List<List<String>> wrapped =
        paragraphs.stream().map(text -> Paragraph.wrap(text, LETTERING, columnWidth)).toList();
    this.columns = share(wrapped, count);
  }

  @Override
  public double height() {
    return HEADING * Paragraph.LINE_SPACING
        + columns.stream().mapToDouble(this::heightOfColumn).max().orElse(0);
  }

  @Override
  public List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Paragraph.text(left, top - HEADING, HEADING, heading, Figure.Align.START));
    for (int i = 0; i < columns.size(); i++) {
      double y = top - HEADING * Paragraph.LINE_SPACING;
      for (List<String> lines : columns.get(i)) {
        figures.addAll(Paragraph.draw(lines, left + i * (columnWidth + GUTTER), y, LETTERING));
        y -= heightOf(lines);
      }
    }
    return figures;
  }

  /** Filled one after the other, so that the highest is as low as it can be. */
  private List<List<List<String>>> share(List<List<String>> paragraphs, int count) {
    double height = heightOfColumn(paragraphs) / count;
    while (true) {
      Filled filled = fill(paragraphs, height);
      if (filled.columns().size() <= count) {
        return filled.columns();
      }
      height = filled.nextHeight();
    }
  }

  /**
   * Columns up to some height, but with one paragraph at least.
   *
   * @param nextHeight the least that would let one of them take one paragraph more
   */
  private record Filled(List<List<List<String>>> columns, double nextHeight) {}

  private Filled fill(List<List<String>> paragraphs, double height) {
    List<List<List<String>>> columns = new ArrayList<>();
    double next = Double.POSITIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (List<String> paragraph : paragraphs) {
      double higher = high + heightOf(paragraph);
      if (higher > height) {
        next = Math.min(next, higher);
        columns.add(new ArrayList<>());
        higher = heightOf(paragraph);
      }
      columns.get(columns.size() - 1).add(paragraph);
      high = higher;
    }
    return new Filled(columns, next);
  }

  private double heightOfColumn(List<List<String>> column) {
    return column.stream().mapToDouble(this::heightOf).sum();
  }

  private double heightOf(List<String> lines) {
    return Paragraph.heightOf(lines.size(), LETTERING) + between;
  }
}
