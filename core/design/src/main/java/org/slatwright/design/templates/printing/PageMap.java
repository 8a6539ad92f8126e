package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.View;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.drafting.Paragraph;

/**
 * A small picture of the page with its tiles numbered, and beside it which they are and where their
 * neighbours lie.
 *
 * @param room for both, in mm on the page
 * @param page its width and height
 */
record PageMap(PaperBox room, PaperBox page) {

  private static final double HEIGHT = 2;
  private static final double NUMBER = 5;
  private static final double GAP = 2;
  private static final double AIR = 0.8;

  /**
   * What it says of one tile.
   *
   * @param legend its name, and where its neighbours are
   */
  record Entry(Template.Tile tile, List<String> legend) {}

  View view(List<Entry> entries) {
    double part = room.height() / page.height();
    PaperBox small =
        new PaperBox(room.left(), room.bottom(), room.left() + part * page.width(), room.top());
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      add(figures, small(entries.get(i).tile(), part), Integer.toString(i + 1));
    }
    figures.add(small.outline(LineKind.THIN));
    figures.addAll(legend(entries, small.right() + GAP));
    return new View("map", "Which tile lies where", Optional.empty(), figures);
  }

  private PaperBox small(Template.Tile tile, double part) {
    PaperPoint low = tile.onPage(tile.from());
    PaperPoint high = tile.onPage(tile.from().moved(tile.widthMm(), tile.heightMm()));
    return new PaperBox(
        room.left() + part * Math.min(low.x(), high.x()),
        room.bottom() + part * Math.min(low.y(), high.y()),
        room.left() + part * Math.max(low.x(), high.x()),
        room.bottom() + part * Math.max(low.y(), high.y()));
  }

  private static void add(List<Figure> figures, PaperBox tile, String number) {
    figures.add(tile.fill(Figure.Shade.TINT));
    figures.add(tile.outline(LineKind.THIN));
    Figure.Text text =
        new Figure.Text(
            new PaperPoint(tile.middleX(), tile.middleY() - HEIGHT / 2),
            HEIGHT,
            number,
            Figure.Align.MIDDLE,
            0);
    if (tile.contains(TextRoom.of(text))) {
      figures.add(text);
    }
  }

  /** With the neighbours where there is room for them all, else in short, as far as it goes. */
  private List<Figure> legend(List<Entry> entries, double left) {
    List<List<String>> all = lines(entries, 2, left);
    return draw(height(all) <= room.height() ? all : lines(entries, 1, left), left);
  }

  private List<List<String>> lines(List<Entry> entries, int most, double left) {
    double width = room.right() - left - NUMBER;
    return entries.stream()
        .map(entry -> String.join("; ", entry.legend().stream().limit(most).toList()))
        .map(words -> Paragraph.wrap(words, HEIGHT, width))
        .toList();
  }

  private static double height(List<List<String>> all) {
    return all.stream().mapToDouble(PageMap::heightOf).sum();
  }

  private static double heightOf(List<String> lines) {
    return lines.size() * HEIGHT * Paragraph.LINE_SPACING + AIR;
  }

  private List<Figure> draw(List<List<String>> all, double left) {
    List<Figure> figures = new ArrayList<>();
    double top = room.top();
    for (int i = 0; i < all.size(); i++) {
      boolean last = i + 1 == all.size();
      if (top - heightOf(all.get(i)) - (last ? 0 : heightOf(List.of("…"))) < room.bottom()) {
        figures.addAll(Paragraph.draw(List.of("…"), left, top, HEIGHT));
        break;
      }
      figures.addAll(Paragraph.draw(List.of(Integer.toString(i + 1)), left, top, HEIGHT));
      figures.addAll(Paragraph.draw(all.get(i), left + NUMBER, top, HEIGHT));
      top -= heightOf(all.get(i));
    }
    return figures;
  }
}
