package org.slatwright.design.templates;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.templates.printing.Draft;

/** What a ruler finds on a draft, read from its lines alone. */
record Ruled(Draft draft) {

  static final double EXACT = 1e-6;

  Stream<Figure.Polyline> lines(LineKind kind) {
    return draft.figures().stream()
        .filter(Figure.Polyline.class::isInstance)
        .map(Figure.Polyline.class::cast)
        .filter(line -> line.line() == kind);
  }

  /** The circles, as they come. */
  List<Figure.Circle> circles() {
    return draft.figures().stream()
        .filter(Figure.Circle.class::isInstance)
        .map(Figure.Circle.class::cast)
        .toList();
  }

  /** Where upright dashed lines stand, from the left: what is folded. */
  List<Double> folds() {
    return lines(LineKind.HIDDEN)
        .filter(line -> !line.closed() && isUpright(line))
        .map(line -> line.points().get(0).x())
        .distinct()
        .sorted()
        .toList();
  }

  /** Closed rectangles in thin lines, from the lowest up. */
  List<Envelope> boxes() {
    return lines(LineKind.THIN)
        .filter(Figure.Polyline::closed)
        .map(Ruled::around)
        .sorted(Comparator.comparing(Envelope::getMinY))
        .toList();
  }

  /** The heights of straight level lines in thin ink from one place to another, from below. */
  List<Double> levels(double from, double to) {
    return lines(LineKind.THIN)
        .filter(line -> !line.closed() && isLevel(line))
        .filter(line -> near(around(line).getMinX(), from) && near(around(line).getMaxX(), to))
        .map(line -> line.points().get(0).y())
        .distinct()
        .sorted()
        .toList();
  }

  List<String> texts() {
    return draft.figures().stream()
        .filter(Figure.Text.class::isInstance)
        .map(figure -> ((Figure.Text) figure).text())
        .toList();
  }

  static boolean near(double one, double other) {
    return Math.abs(one - other) < EXACT;
  }

  static boolean near(PaperPoint one, double x, double y) {
    return near(one.x(), x) && near(one.y(), y);
  }

  static boolean near(Envelope one, Envelope other) {
    return near(one.getMinX(), other.getMinX())
        && near(one.getMaxX(), other.getMaxX())
        && near(one.getMinY(), other.getMinY())
        && near(one.getMaxY(), other.getMaxY());
  }

  static Envelope around(Figure.Polyline line) {
    Envelope around = new Envelope();
    line.points().forEach(point -> around.expandToInclude(point.x(), point.y()));
    return around;
  }

  private static boolean isUpright(Figure.Polyline line) {
    return around(line).getWidth() == 0;
  }

  private static boolean isLevel(Figure.Polyline line) {
    return around(line).getHeight() == 0;
  }
}
