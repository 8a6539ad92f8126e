package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** A line of a drawing as a pen would trace it, told without any of the code that clips. */
record Traced(LineKind kind, List<Figure> curve) {

  private static final int SAMPLES = 200;

  /** Every line among the figures; texts and fills left out. */
  static List<Traced> of(List<Figure> figures) {
    return Leaves.of(figures).flatMap(Traced::of).toList();
  }

  private static Stream<Traced> of(Figure figure) {
    if (figure instanceof Figure.Polyline line) {
      return Stream.of(new Traced(line.line(), List.of(line)));
    } else if (figure instanceof Figure.Circle circle) {
      Figure all = new Figure.Arc(circle.centre(), circle.radius(), 0, 360, circle.line());
      return Stream.of(new Traced(circle.line(), List.of(all)));
    }
    return figure instanceof Figure.Arc arc
        ? Stream.of(new Traced(arc.line(), List.of(arc)))
        : Stream.empty();
  }

  /** Places along it, both ends among them. */
  List<PaperPoint> samples() {
    Figure figure = curve.get(0);
    return IntStream.rangeClosed(0, SAMPLES)
        .mapToObj(i -> at(figure, i / (double) SAMPLES))
        .toList();
  }

  double distance(PaperPoint point) {
    return curve.get(0) instanceof Figure.Arc arc
        ? distance(arc, point)
        : distance((Figure.Polyline) curve.get(0), point);
  }

  private static PaperPoint at(Figure figure, double share) {
    if (figure instanceof Figure.Arc arc) {
      return on(arc, arc.startDegrees() + share * arc.sweepDegrees());
    }
    List<PaperPoint> points = closed((Figure.Polyline) figure);
    double along = share * (points.size() - 1);
    int index = (int) Math.min(along, points.size() - 2);
    PaperPoint from = points.get(index);
    PaperPoint to = points.get(index + 1);
    double part = along - index;
    return from.moved(part * (to.x() - from.x()), part * (to.y() - from.y()));
  }

  private static PaperPoint on(Figure.Arc arc, double degrees) {
    double angle = Math.toRadians(degrees);
    return arc.centre().moved(arc.radius() * Math.cos(angle), arc.radius() * Math.sin(angle));
  }

  private static List<PaperPoint> closed(Figure.Polyline line) {
    Stream<PaperPoint> back = line.closed() ? line.points().stream().limit(1) : Stream.empty();
    return Stream.concat(line.points().stream(), back).toList();
  }

  private static double distance(Figure.Arc arc, PaperPoint point) {
    double angle =
        Math.toDegrees(Math.atan2(point.y() - arc.centre().y(), point.x() - arc.centre().x()));
    double along = Math.signum(arc.sweepDegrees()) * (angle - arc.startDegrees());
    double within = ((along % 360) + 360) % 360;
    if (within <= Math.abs(arc.sweepDegrees())) {
      return Math.abs(apart(arc.centre(), point) - arc.radius());
    }
    return Math.min(
        apart(on(arc, arc.startDegrees()), point),
        apart(on(arc, arc.startDegrees() + arc.sweepDegrees()), point));
  }

  private static double distance(Figure.Polyline line, PaperPoint point) {
    List<PaperPoint> points = closed(line);
    return IntStream.range(1, points.size())
        .mapToDouble(i -> distance(points.get(i - 1), points.get(i), point))
        .min()
        .orElseThrow();
  }

  private static double distance(PaperPoint from, PaperPoint to, PaperPoint point) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double square = dx * dx + dy * dy;
    double along =
        square == 0 ? 0 : ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / square;
    double share = Math.max(0, Math.min(1, along));
    return apart(from.moved(share * dx, share * dy), point);
  }

  static double apart(PaperPoint one, PaperPoint other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }
}
