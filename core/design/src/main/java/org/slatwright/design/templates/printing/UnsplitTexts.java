package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/**
 * Moves texts that a cut runs through, where no cut could avoid it, beside the cut: a tile shows a
 * text whole or not at all.
 *
 * @param seen what is seen of each tile in the end
 */
record UnsplitTexts(List<PaperBox> seen) {

  static UnsplitTexts on(Grid grid) {
    return new UnsplitTexts(
        IntStream.range(0, grid.size())
            .mapToObj(i -> grid.seen(i / grid.columns().size(), i % grid.columns().size()))
            .toList());
  }

  List<Figure> of(List<Figure> figures) {
    return figures.stream().map(this::of).toList();
  }

  private Figure of(Figure figure) {
    if (figure instanceof Figure.Text text) {
      PaperBox room = TextRoom.of(text);
      return seen.stream().anyMatch(tile -> tile.contains(room)) ? text : beside(text, room);
    } else if (figure instanceof Figure.Dimension dimension) {
      return new Figure.Dimension(dimension.value(), dimension.text(), of(dimension.drawn()));
    } else if (figure instanceof Figure.Cluster cluster) {
      return new Figure.Cluster(cluster.id(), cluster.title(), of(cluster.figures()));
    }
    return figure;
  }

  /** In the tile that has its middle, smaller where it would be too long for that. */
  private Figure.Text beside(Figure.Text text, PaperBox room) {
    PaperPoint middle = new PaperPoint(room.middleX(), room.middleY());
    return seen.stream()
        .filter(tile -> tile.contains(middle))
        .findFirst()
        .map(tile -> into(tile, fitted(text, room, tile)))
        .orElse(text);
  }

  private static Figure.Text fitted(Figure.Text text, PaperBox room, PaperBox tile) {
    double part = Math.min(tile.width() / room.width(), tile.height() / room.height());
    double height = text.height() * Math.min(1, part);
    return new Figure.Text(text.at(), height, text.text(), text.align(), text.degrees());
  }

  private static Figure.Text into(PaperBox tile, Figure.Text text) {
    PaperBox room = TextRoom.of(text);
    double dx = Math.max(0, tile.left() - room.left()) - Math.max(0, room.right() - tile.right());
    double dy = Math.max(0, tile.bottom() - room.bottom()) - Math.max(0, room.top() - tile.top());
    return new Figure.Text(
        text.at().moved(dx, dy), text.height(), text.text(), text.align(), text.degrees());
  }
}
