package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;

/** What is drawn in the end, out of the groups that hold it. */
final class Leaves {

  private Leaves() {}

  /** Every figure that is no group, in drawing order. */
  static Stream<Figure> of(List<Figure> figures) {
    return figures.stream().flatMap(Leaves::of);
  }

  /** Every text among them. */
  static Stream<Figure.Text> texts(List<Figure> figures) {
    return of(figures)
        .filter(figure -> figure instanceof Figure.Text)
        .map(figure -> (Figure.Text) figure);
  }

  private static Stream<Figure> of(Figure figure) {
    if (figure instanceof Figure.Dimension dimension) {
      return of(dimension.drawn());
    }
    return figure instanceof Figure.Cluster cluster ? of(cluster.figures()) : Stream.of(figure);
  }
}
