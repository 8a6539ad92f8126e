package org.slatwright.design.outline;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * Outlines whose straight edges run along the axes. Every corner is a right angle, sharp or rounded
 * by a quarter circle, so that every point of the outline, arc centres too, is exact.
 */
public final class Outlines {

  private Outlines() {}

  /**
   * A corner of an outline.
   *
   * @param at where its two edges meet, or would meet if it were not rounded
   * @param radius of its quarter circle, inside or outside; zero for a sharp corner
   */
  public record Corner(Point2 at, Length radius) {

    public Corner {
      if (radius.isNegative()) {
        throw new IllegalArgumentException("a corner's radius must be >= 0, was " + radius);
      }
    }

    /** A corner that is not rounded. */
    public static Corner sharp(Length x, Length y) {
      return new Corner(new Point2(x, y), Length.ZERO);
    }

    /** A corner rounded to {@code radius}. */
    public static Corner round(Length x, Length y, Length radius) {
      return new Corner(new Point2(x, y), radius);
    }

    private Point2 towards(Corner other) {
      return new Point2(
          at.x().plus(step(at.x(), other.at.x())), at.y().plus(step(at.y(), other.at.y())));
    }

    private Length step(Length from, Length to) {
      return radius.times(to.compareTo(from));
    }
  }

  /** A rectangle with sharp corners whose lower left corner is {@code low}. */
  public static Outline.Path rectangle(Point2 low, Length width, Length height) {
    return rounded(low, width, height, Length.ZERO);
  }

  /** A rectangle with its lower left corner at the origin and four round corners. */
  public static Outline.Path roundedRectangle(Length width, Length height, Length radius) {
    return rounded(Point2.ORIGIN, width, height, radius);
  }

  private static Outline.Path rounded(Point2 low, Length width, Length height, Length radius) {
    Point2 high = low.moved(width, height);
    return rightAngled(
        List.of(
            Corner.round(low.x(), low.y(), radius),
            Corner.round(high.x(), low.y(), radius),
            Corner.round(high.x(), high.y(), radius),
            Corner.round(low.x(), high.y(), radius)));
  }

  /**
   * The outline through the corners in order, counter-clockwise; the last joins the first.
   *
   * @param corners each level with, or straight above or below, the one before it
   * @throws IllegalArgumentException when two corners are joined by a slanting edge, or by one that
   *     is too short for their radii
   */
  public static Outline.Path rightAngled(List<Corner> corners) {
    List<Outline.Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Corner before = corners.get(Math.floorMod(i - 1, corners.size()));
      Corner here = corners.get(i);
      Corner after = corners.get((i + 1) % corners.size());
      requireRoom(here, after);
      if (here.radius().isPositive()) {
        edges.add(quarterCircle(before, here, after));
      }
      Point2 from = here.towards(after);
      Point2 to = after.towards(here);
      if (!from.equals(to)) {
        edges.add(new Outline.Line(from, to));
      }
    }
    return new Outline.Path(edges);
  }

  private static Outline.Arc quarterCircle(Corner before, Corner here, Corner after) {
    Point2 from = here.towards(before);
    Point2 to = here.towards(after);
    Point2 centre = from.moved(to.x().minus(here.at().x()), to.y().minus(here.at().y()));
    return new Outline.Arc(from, to, centre, turnsLeft(before.at(), here.at(), after.at()));
  }

  private static boolean turnsLeft(Point2 before, Point2 here, Point2 after) {
    int inX = here.x().compareTo(before.x());
    int inY = here.y().compareTo(before.y());
    int outX = after.x().compareTo(here.x());
    int outY = after.y().compareTo(here.y());
    return inX * outY - inY * outX > 0;
  }

  private static void requireRoom(Corner from, Corner to) {
    Length dx = to.at().x().minus(from.at().x()).abs();
    Length dy = to.at().y().minus(from.at().y()).abs();
    if (dx.isZero() == dy.isZero()) {
      throw new IllegalArgumentException(
          "the edge from " + from.at() + " to " + to.at() + " does not run along an axis");
    }
    if (dx.plus(dy).isLessThan(from.radius().plus(to.radius()))) {
      throw new IllegalArgumentException(
          "the edge from " + from.at() + " to " + to.at() + " is too short for its round corners");
    }
  }
}
