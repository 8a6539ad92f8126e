package org.slatwright.design.drafting;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Point3;

/**
 * A box as an eye sees it that stands before it, to its right and above it, all by the same angle:
 * isometric axonometry (ISO 5456-3).
 *
 * <p>Here x runs to the right, y to the front and z up, all three towards the eye, in nanometres.
 * The line of sight through a point meets the floor at a = x - z, b = y - z, and these two are the
 * picture: whole numbers, in which every edge runs along b, along a or along a - b, so that what
 * hides what is found exactly. Only {@link #right} and {@link #up} know how the picture looks.
 */
record Isometric(Range x, Range y, Range z, Silhouette silhouette) {

  private static final double NM_PER_MM = 1e6;

  static Isometric of(Box box) {
    Point3 low = box.low();
    Point3 high = box.high();
    return new Isometric(
        new Range(low.x().nanometres(), high.x().nanometres()),
        new Range(-high.y().nanometres(), -low.y().nanometres()),
        new Range(low.z().nanometres(), high.z().nanometres()));
  }

  private Isometric(Range x, Range y, Range z) {
    this(x, y, z, new Silhouette(x.minus(z), y.minus(z), x.minus(y)));
  }

  /** How far right a place of the picture lies, in mm; lengths along the axes keep their size. */
  static double right(double a, double b) {
    return (a - b) * Math.sqrt(3) / 2 / NM_PER_MM;
  }

  /** How far up a place of the picture lies, in mm; lengths along the axes keep their size. */
  static double up(double a, double b) {
    return -(a + b) / 2 / NM_PER_MM;
  }

  /** The corners of what it covers of the picture, in order around it. */
  List<Coordinate> outline() {
    return List.of(
        corner(x.high(), y.low(), z.low()),
        corner(x.high(), y.high(), z.low()),
        corner(x.low(), y.high(), z.low()),
        corner(x.low(), y.high(), z.high()),
        corner(x.low(), y.low(), z.high()),
        corner(x.high(), y.low(), z.high()));
  }

  private static Coordinate corner(double x, double y, double z) {
    return new Coordinate(x - z, y - z);
  }

  /**
   * A place on each of the three faces that are turned to the eye.
   *
   * @param along how far along the longer side of the face, as a part of it
   * @param across how far along the shorter one
   */
  Stream<Coordinate> onFaces(double along, double across) {
    boolean wide = x.size() > y.size();
    boolean high = z.size() > x.size();
    boolean deep = y.size() > z.size();
    return Stream.of(
        corner(x.at(wide ? along : across), y.at(wide ? across : along), z.high()),
        corner(x.at(high ? across : along), y.high(), z.at(high ? along : across)),
        corner(x.high(), y.at(deep ? along : across), z.at(deep ? across : along)));
  }

  /** How far right its left end lies on the picture, in mm. */
  double leftmost() {
    return right(silhouette.c().low(), 0);
  }

  /** How far up its lowest corner lies on the picture, in mm. */
  double lowest() {
    return up(x.high() - z.low(), y.high() - z.low());
  }

  /** In mm on the picture. */
  double width() {
    return right(silhouette.c().high(), 0) - leftmost();
  }

  /** In mm on the picture. */
  double height() {
    return up(x.low() - z.high(), y.low() - z.high()) - lowest();
  }

  /**
   * Whether this may hide some of {@code other}, and never the other way round, of two boxes that
   * share no space: some plane across an axis then has this one wholly on the eye's side.
   */
  boolean isBefore(Isometric other) {
    return x.isBeyond(other.x) || y.isBeyond(other.y) || z.isBeyond(other.z);
  }

  /** How far towards the eye the line of sight through a place of the picture leaves the box. */
  double nearest(double a, double b) {
    return Math.min(Math.min(x.high() - a, y.high() - b), z.high());
  }

  /** Whether what is seen of the box at a place of the picture is its right side. */
  boolean showsRightSide(double a, double b) {
    return x.high() - a == nearest(a, b);
  }

  /** From one coordinate to a greater one. */
  record Range(long low, long high) {

    /** The differences of what lies in this and what lies in {@code other}. */
    Range minus(Range other) {
      return new Range(low - other.high, high - other.low);
    }

    long size() {
      return high - low;
    }

    /** Where so great a part of it ends. */
    double at(double part) {
      return low + part * size();
    }

    boolean isBeyond(Range other) {
      return low >= other.high;
    }

    /** Whether the two share more than an end. */
    boolean overlaps(Range other) {
      return low < other.high && other.low < high;
    }

    boolean covers(Range other) {
      return low <= other.low && other.high <= high;
    }

    /** Whether {@code at} lies between the ends. */
    boolean holds(double at) {
      return low < at && at < high;
    }
  }

  /** What a solid covers of the picture. */
  interface Cover {

    /** The stretch of a line that lies within; nothing on its boundary. */
    Spans on(IsometricEdge.Line line);

    /** Whether a place of the picture lies within. */
    boolean holds(double a, double b);

    /** Whether nothing of {@code other} is outside. */
    boolean covers(Silhouette other);
  }

  /**
   * What a box covers of the picture: a hexagon.
   *
   * @param c of a - b
   */
  record Silhouette(Range a, Range b, Range c) implements Cover {

    boolean overlaps(Silhouette other) {
      return a.overlaps(other.a) && b.overlaps(other.b) && c.overlaps(other.c);
    }

    @Override
    public boolean covers(Silhouette other) {
      return a.covers(other.a) && b.covers(other.b) && c.covers(other.c);
    }

    @Override
    public Spans on(IsometricEdge.Line line) {
      return line.within(this);
    }

    @Override
    public boolean holds(double placeA, double placeB) {
      return a.holds(placeA) && b.holds(placeB) && c.holds(placeA - placeB);
    }
  }
}
