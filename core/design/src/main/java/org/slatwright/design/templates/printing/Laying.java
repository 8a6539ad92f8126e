package org.slatwright.design.templates.printing;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;

/**
 * Lays figures elsewhere.
 *
 * @param from a place among the figures
 * @param at where that comes to lie
 * @param turned whether all turns a quarter counter-clockwise about it
 * @param prefix put before the id of each cluster
 */
record Laying(PaperPoint from, PaperPoint at, boolean turned, String prefix) {

  private static final double QUARTER = 90;

  static Laying moved(double dx, double dy) {
    return new Laying(new PaperPoint(0, 0), new PaperPoint(dx, dy), false, "");
  }

  PaperPoint point(PaperPoint point) {
    double right = point.x() - from.x();
    double up = point.y() - from.y();
    return turned ? at.moved(-up, right) : at.moved(right, up);
  }

  List<Figure> figures(List<? extends Figure> figures) {
    return figures.stream().map(this::figure).toList();
  }

  private List<PaperPoint> points(List<PaperPoint> points) {
    return points.stream().map(this::point).toList();
  }

  private double turn(double degrees) {
    return turned ? degrees + QUARTER : degrees;
  }

  private Figure figure(Figure figure) {
    if (figure instanceof Figure.Polyline line) {
      return new Figure.Polyline(points(line.points()), line.closed(), line.line());
    } else if (figure instanceof Figure.Circle circle) {
      return new Figure.Circle(point(circle.centre()), circle.radius(), circle.line());
    } else if (figure instanceof Figure.Arc arc) {
      double start = turn(arc.startDegrees());
      return new Figure.Arc(
          point(arc.centre()), arc.radius(), start, arc.sweepDegrees(), arc.line());
    } else if (figure instanceof Figure.Fill fill) {
      return new Figure.Fill(points(fill.points()), fill.shade());
    } else if (figure instanceof Figure.Text text) {
      return new Figure.Text(
          point(text.at()), text.height(), text.text(), text.align(), turn(text.degrees()));
    } else if (figure instanceof Figure.Dimension dimension) {
      return new Figure.Dimension(dimension.value(), dimension.text(), figures(dimension.drawn()));
    }
    Figure.Cluster cluster = (Figure.Cluster) figure;
    return new Figure.Cluster(prefix + cluster.id(), cluster.title(), figures(cluster.figures()));
  }
}
