package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/** Clips circles and arcs to a window; what is left are true arcs. */
record ArcClip(PaperBox window) {

  private static final double FULL = 360;
  private static final double NOTHING_DEGREES = 1e-9;

  /** What of a circle lies in the window: all, nothing, or arcs. */
  List<Figure> of(Figure.Circle circle) {
    PaperPoint centre = circle.centre();
    double radius = circle.radius();
    List<Stretch> parts = parts(new Figure.Arc(centre, radius, 0, FULL, circle.line()));
    if (parts.size() == 1 && parts.get(0).length() >= FULL) {
      return List.of(circle);
    }
    return joinedAround(parts).stream()
        .map(part -> arc(centre, radius, part.from(), part.length(), circle.line()))
        .toList();
  }

  /** What of an arc lies in the window. */
  List<Figure> of(Figure.Arc arc) {
    double way = Math.signum(arc.sweepDegrees());
    List<Stretch> parts = parts(arc);
    if (parts.size() == 1 && parts.get(0).length() >= Math.abs(arc.sweepDegrees())) {
      return List.of(arc);
    }
    return parts.stream()
        .map(
            part ->
                arc(
                    arc.centre(),
                    arc.radius(),
                    arc.startDegrees() + way * part.from(),
                    way * part.length(),
                    arc.line()))
        .toList();
  }

  private static Figure arc(
      PaperPoint centre, double radius, double start, double sweep, LineKind line) {
    return new Figure.Arc(centre, radius, start, sweep, line);
  }

  /** The stretches inside, in degrees from its start along its way. */
  private List<Stretch> parts(Figure.Arc arc) {
    double sweep = Math.abs(arc.sweepDegrees());
    double way = Math.signum(arc.sweepDegrees());
    TreeSet<Double> ends = new TreeSet<>(List.of(0.0, sweep));
    for (double angle : crossings(arc.centre(), arc.radius())) {
      double along = modulo(way * (angle - arc.startDegrees()));
      if (along < sweep) {
        ends.add(along);
      }
    }
    List<Stretch> parts = new ArrayList<>();
    double from = 0;
    for (double to : ends) {
      double middle = Math.toRadians(arc.startDegrees() + way * (from + to) / 2);
      PaperPoint there =
          arc.centre().moved(arc.radius() * Math.cos(middle), arc.radius() * Math.sin(middle));
      if (to - from > NOTHING_DEGREES && window.contains(there)) {
        add(parts, from, to);
      }
      from = to;
    }
    return parts;
  }

  private static void add(List<Stretch> parts, double from, double to) {
    int last = parts.size() - 1;
    if (last >= 0 && from - parts.get(last).to() <= NOTHING_DEGREES) {
      parts.set(last, new Stretch(parts.get(last).from(), to));
    } else {
      parts.add(new Stretch(from, to));
    }
  }

  /** What ends where a circle closes goes on with what starts there. */
  private static List<Stretch> joinedAround(List<Stretch> parts) {
    int last = parts.size() - 1;
    if (last < 1 || parts.get(0).from() > 0 || parts.get(last).to() < FULL) {
      return parts;
    }
    List<Stretch> joined = new ArrayList<>(parts.subList(1, last));
    joined.add(new Stretch(parts.get(last).from(), FULL + parts.get(0).to()));
    return joined;
  }

  /** Where the whole circle crosses the lines that bound the window, in degrees. */
  private List<Double> crossings(PaperPoint centre, double radius) {
    List<Double> angles = new ArrayList<>();
    for (double x : new double[] {window.left(), window.right()}) {
      double cosine = (x - centre.x()) / radius;
      if (Math.abs(cosine) < 1) {
        angles.add(Math.toDegrees(Math.acos(cosine)));
        angles.add(-Math.toDegrees(Math.acos(cosine)));
      }
    }
    for (double y : new double[] {window.bottom(), window.top()}) {
      double sine = (y - centre.y()) / radius;
      if (Math.abs(sine) < 1) {
        angles.add(Math.toDegrees(Math.asin(sine)));
        angles.add(FULL / 2 - Math.toDegrees(Math.asin(sine)));
      }
    }
    return angles;
  }

  private static double modulo(double degrees) {
    double rest = degrees % FULL;
    return rest < 0 ? rest + FULL : rest;
  }
}
