package org.slatwright.exporter.dxf;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * The space that a drawing takes; for viewers to zoom to, and to keep the size check clear of.
 *
 * @param low the lower left corner
 * @param high the upper right corner
 */
record Extent(Point2 low, Point2 high) {

  private static final int QUARTERS = 4;

  /** Around the origin and all entities. */
  static Extent of(List<Entity> entities) {
    return entities.stream()
        .flatMap(Extent::reach)
        .map(point -> new Extent(point, point))
        .reduce(new Extent(Point2.ORIGIN, Point2.ORIGIN), Extent::around);
  }

  private Extent around(Extent other) {
    return new Extent(
        new Point2(Length.min(low.x(), other.low.x()), Length.min(low.y(), other.low.y())),
        new Point2(Length.max(high.x(), other.high.x()), Length.max(high.y(), other.high.y())));
  }

  /** Points that no part of the entity lies beyond. */
  private static Stream<Point2> reach(Entity entity) {
    if (entity instanceof Entity.Contour contour) {
      return contour.edges().stream().flatMap(Extent::reach);
    }
    if (entity instanceof Entity.Circle circle) {
      Length radius = circle.radius();
      return Stream.of(
          circle.centre().moved(radius.negated(), radius.negated()),
          circle.centre().moved(radius, radius));
    }
    if (entity instanceof Entity.Line line) {
      return Stream.of(line.from(), line.to());
    }
    Entity.Lettering lettering = (Entity.Lettering) entity;
    // A character as wide as it is high: no reader's font is wider.
    Length width = lettering.height().times(lettering.text().length());
    return Stream.of(lettering.at(), lettering.at().moved(width, lettering.height()));
  }

  private static Stream<Point2> reach(Outline.Edge edge) {
    return edge instanceof Outline.Arc arc
        ? Stream.concat(Stream.of(arc.from(), arc.to()), turningPoints(arc))
        : Stream.of(edge.from(), edge.to());
  }

  /** Where the arc runs level or plumb: its extremes, besides its ends. */
  private static Stream<Point2> turningPoints(Outline.Arc arc) {
    Length radius = Length.roundedMm(arc.radiusMm());
    List<Point2> compass =
        List.of(
            arc.centre().moved(radius, Length.ZERO),
            arc.centre().moved(Length.ZERO, radius),
            arc.centre().moved(radius.negated(), Length.ZERO),
            arc.centre().moved(Length.ZERO, radius.negated()));
    return IntStream.range(0, QUARTERS)
        .filter(quarter -> passes(arc, quarter * Math.PI / 2))
        .mapToObj(compass::get);
  }

  private static boolean passes(Outline.Arc arc, double angle) {
    double turn = (angle - arc.angle(arc.from())) * Math.signum(arc.sweep());
    double forward = turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
    return forward < Math.abs(arc.sweep());
  }
}
