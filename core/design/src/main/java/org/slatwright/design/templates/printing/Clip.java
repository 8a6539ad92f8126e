package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.design.drafting.PaperBox;

/**
 * Shows what of figures lies in a window: lines and curves exactly up to its edge, texts where they
 * lie in it whole.
 */
record Clip(PaperBox window) {

  /** The same figures as far as they are seen. */
  List<Figure> of(List<Figure> figures) {
    List<Figure> seen = new ArrayList<>();
    figures.forEach(figure -> seen.addAll(of(figure)));
    return seen;
  }

  private List<Figure> of(Figure figure) {
    if (figure instanceof Figure.Polyline line) {
      return new LineClip(window).of(line);
    } else if (figure instanceof Figure.Circle circle) {
      return new ArcClip(window).of(circle);
    } else if (figure instanceof Figure.Arc arc) {
      return new ArcClip(window).of(arc);
    } else if (figure instanceof Figure.Fill fill) {
      return new FillClip(window).of(fill).stream().toList();
    } else if (figure instanceof Figure.Text text) {
      return window.contains(TextRoom.of(text)) ? List.of(text) : List.of();
    } else if (figure instanceof Figure.Dimension dimension) {
      List<Figure> drawn = of(dimension.drawn());
      return drawn.isEmpty()
          ? drawn
          : List.of(new Figure.Dimension(dimension.value(), dimension.text(), drawn));
    }
    Figure.Cluster cluster = (Figure.Cluster) figure;
    List<Figure> inner = of(cluster.figures());
    return inner.isEmpty()
        ? inner
        : List.of(new Figure.Cluster(cluster.id(), cluster.title(), inner));
  }
}
