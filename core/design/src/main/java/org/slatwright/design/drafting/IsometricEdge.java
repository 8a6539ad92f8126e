package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.model.Axis;
import org.slatwright.design.drafting.Isometric.Range;
import org.slatwright.design.drafting.Isometric.Silhouette;

/**
 * A stretch of an edge in an isometric picture.
 *
 * @param line that it lies on
 * @param from coordinate a on the picture, of an edge along y coordinate b
 * @param to greater than {@code from}
 */
record IsometricEdge(Line line, long from, long to) {

  /**
   * A line of the picture.
   *
   * @param axis that it runs along
   * @param at coordinate b on the picture, of a line along y coordinate a, of one along z a - b
   */
  record Line(Axis axis, long at) {

    /** The line along {@code axis} through a place of the picture. */
    static Line through(Coordinate place, Axis axis) {
      return new Line(
          axis,
          switch (axis) {
            case X -> (long) place.y;
            case Y -> (long) place.x;
            case Z -> (long) (place.x - place.y);
          });
    }

    /** How far along the line a place on it lies. */
    long along(Coordinate place) {
      return (long) (axis == Axis.Y ? place.y : place.x);
    }

    Coordinate place(long along) {
      return switch (axis) {
        case X -> new Coordinate(along, at);
        case Y -> new Coordinate(at, along);
        case Z -> new Coordinate(along, along - at);
      };
    }

    /** The stretch between two bounds that lies within a silhouette; nothing on its boundary. */
    Spans within(Silhouette s) {
      return switch (axis) {
        case X -> s.b().holds(at) ? shared(s.a(), s.c().low() + at, s.c().high() + at) : Spans.NONE;
        case Y -> s.a().holds(at) ? shared(s.b(), at - s.c().high(), at - s.c().low()) : Spans.NONE;
        case Z -> s.c().holds(at) ? shared(s.a(), s.b().low() + at, s.b().high() + at) : Spans.NONE;
      };
    }

    private static Spans shared(Range range, long low, long high) {
      return Spans.of(Math.max(range.low(), low), Math.min(range.high(), high));
    }
  }

  /** The nine edges of a box that are turned to the eye. */
  static List<IsometricEdge> of(Isometric box) {
    Range x = box.x();
    Range y = box.y();
    Range z = box.z();
    return List.of(
        alongX(x, y.high(), z.high()),
        alongX(x, y.low(), z.high()),
        alongX(x, y.high(), z.low()),
        alongY(x.high(), y, z.high()),
        alongY(x.low(), y, z.high()),
        alongY(x.high(), y, z.low()),
        alongZ(x.high(), y.high(), z),
        alongZ(x.low(), y.high(), z),
        alongZ(x.high(), y.low(), z));
  }

  /** The one edge of a box that is no more than a line along an axis. */
  static IsometricEdge ofLine(Isometric line) {
    if (line.x().low() < line.x().high()) {
      return alongX(line.x(), line.y().low(), line.z().low());
    }
    return line.y().low() < line.y().high()
        ? alongY(line.x().low(), line.y(), line.z().low())
        : alongZ(line.x().low(), line.y().low(), line.z());
  }

  private static IsometricEdge alongX(Range x, long y, long z) {
    return new IsometricEdge(new Line(Axis.X, y - z), x.low() - z, x.high() - z);
  }

  private static IsometricEdge alongY(long x, Range y, long z) {
    return new IsometricEdge(new Line(Axis.Y, x - z), y.low() - z, y.high() - z);
  }

  private static IsometricEdge alongZ(long x, long y, Range z) {
    return new IsometricEdge(new Line(Axis.Z, x - y), x - z.high(), x - z.low());
  }

  /** Its stretches from one place to the next; those that do not lie on it do not count. */
  Stream<IsometricEdge> parted(NavigableSet<Long> places) {
    List<IsometricEdge> parts = new ArrayList<>();
    long start = from;
    for (long end : places.subSet(from, false, to, false)) {
      parts.add(new IsometricEdge(line, start, end));
      start = end;
    }
    parts.add(new IsometricEdge(line, start, to));
    return parts.stream();
  }

  /** Where it starts on the picture, a and b as x and y. */
  Coordinate start() {
    return line.place(from);
  }

  Coordinate end() {
    return line.place(to);
  }
}
