package org.slatwright.testkit;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;

/**
 * A sheet beside the page that some program drew of it: how far lines along the edges of the paper
 * and circles lie from their places, in mm. A line is looked at where no other ink is beside it.
 */
public final class SeenPage {

  /** Shorter ones have no room beside their ends. */
  private static final double SHORTEST = 2.5;

  private static final double SMALLEST_RADIUS = 1.5;
  private static final double ALONG_AN_EDGE = 1e-6;

  /** What is further off than this less half a line is not found. */
  private static final double REACH = 0.45;

  /** A stretch of ink longer or shorter by this is not that line alone. */
  private static final double LINE_WITHIN = 0.06;

  private static final int PLACES = 20;
  private static final double[] CROSSINGS_DEGREES = {45, 40, 50, 35, 55, 30, 60};

  private final Sheet sheet;
  private final Ink ink;

  /** Of a sheet and a page of the same size. */
  public SeenPage(Sheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  /** What it is the page of. */
  public Sheet sheet() {
    return sheet;
  }

  /** As it was drawn. */
  public Ink ink() {
    return ink;
  }

  /**
   * How far from their places all that could be measured lies.
   *
   * @param right of upright lines and circles
   * @param up of level lines and circles
   * @param lines asked for, measured or not
   * @param circles asked for and all measured
   */
  public record Offsets(List<Double> right, List<Double> up, int lines, int circles) {

    /** The least and the most of all to the right. */
    public DoubleSummaryStatistics ofRight() {
      return right.stream().mapToDouble(Double::doubleValue).summaryStatistics();
    }

    /** The least and the most of all up. */
    public DoubleSummaryStatistics ofUp() {
      return up.stream().mapToDouble(Double::doubleValue).summaryStatistics();
    }

    /** Lines measured, as a part of those asked for. */
    public double part() {
      return (right.size() + up.size() - 2 * circles) / (double) lines;
    }
  }

  /** Of every solid line and every circle that is large enough. */
  public Offsets offsets() {
    List<Figure> figures = sheet.views().stream().flatMap(view -> leaves(view.figures())).toList();
    List<Double> right = new ArrayList<>();
    List<Double> up = new ArrayList<>();
    List<Segment> lines = figures.stream().flatMap(SeenPage::segments).toList();
    for (Segment line : lines) {
      off(line).ifPresent((line.isLevel() ? up : right)::add);
    }
    List<Figure.Circle> circles =
        figures.stream()
            .filter(figure -> figure instanceof Figure.Circle)
            .map(figure -> (Figure.Circle) figure)
            .filter(circle -> circle.radius() >= SMALLEST_RADIUS)
            .toList();
    for (Figure.Circle circle : circles) {
      PaperPoint off = off(circle);
      right.add(off.x());
      up.add(off.y());
    }
    return new Offsets(right, up, lines.size(), circles.size());
  }

  /** All figures that stand in no other. */
  static Stream<Figure> leaves(List<Figure> figures) {
    return figures.stream()
        .flatMap(
            figure ->
                figure instanceof Figure.Cluster cluster
                    ? leaves(cluster.figures())
                    : figure instanceof Figure.Dimension dimension
                        ? leaves(dimension.drawn())
                        : Stream.of(figure));
  }

  /**
   * A straight line along an edge of the paper.
   *
   * @param from its left or lower end
   */
  record Segment(PaperPoint from, PaperPoint to, LineKind kind) {

    boolean isLevel() {
      return Math.abs(to.y() - from.y()) < ALONG_AN_EDGE;
    }

    boolean isUpright() {
      return Math.abs(to.x() - from.x()) < ALONG_AN_EDGE;
    }

    double length() {
      return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }
  }

  /** The lines of a figure that can be measured. */
  static Stream<Segment> segments(Figure figure) {
    if (!(figure instanceof Figure.Polyline polyline) || !polyline.line().dashesMm().isEmpty()) {
      return Stream.empty();
    }
    List<Segment> all = new ArrayList<>();
    List<PaperPoint> points = polyline.points();
    int count = polyline.closed() ? points.size() : points.size() - 1;
    for (int i = 0; i < count; i++) {
      all.add(new Segment(points.get(i), points.get((i + 1) % points.size()), polyline.line()));
    }
    return all.stream()
        .filter(line -> line.isLevel() || line.isUpright())
        .filter(line -> line.length() >= SHORTEST);
  }

  /** How far up from its place a level line lies, or to the right an upright one. */
  OptionalDouble off(Segment line) {
    double width = line.kind().widthMm();
    for (int i = 0; i < PLACES; i++) {
      double part = (i + 0.5) / PLACES;
      double x = line.from().x() + part * (line.to().x() - line.from().x());
      double y = line.from().y() + part * (line.to().y() - line.from().y());
      OptionalDouble off =
          line.isLevel()
              ? off(ink.up(x, y - REACH, y + REACH), width, y)
              : off(ink.along(y, x - REACH, x + REACH), width, x);
      if (off.isPresent()) {
        return off;
      }
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble off(Ink.Stretch stretch, double width, double place) {
    return Math.abs(stretch.length() - width) < LINE_WITHIN
        ? OptionalDouble.of(stretch.middle() - place)
        : OptionalDouble.empty();
  }

  /**
   * How far right and up from its place the middle of a circle lies.
   *
   * @throws AssertionError when other ink is beside it all round, or none where it should be
   */
  PaperPoint off(Figure.Circle circle) {
    return DoubleStream.of(CROSSINGS_DEGREES)
        .mapToObj(degrees -> off(circle, Math.toRadians(degrees)))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow(() -> new AssertionError(circle + " is not seen on " + sheet.name()));
  }

  /** By where level and upright lines cross it. */
  private Optional<PaperPoint> off(Figure.Circle circle, double angle) {
    double near = circle.radius() * Math.cos(angle);
    double far = circle.radius() * Math.sin(angle);
    double width = circle.line().widthMm() / Math.cos(angle);
    double x = circle.centre().x();
    double y = circle.centre().y();
    List<OptionalDouble> right =
        Stream.of(x - near, x + near)
            .map(at -> off(ink.along(y + far, at - 2 * REACH, at + 2 * REACH), width, at))
            .toList();
    List<OptionalDouble> up =
        Stream.of(y - near, y + near)
            .map(at -> off(ink.up(x + far, at - 2 * REACH, at + 2 * REACH), width, at))
            .toList();
    return Stream.concat(right.stream(), up.stream()).allMatch(OptionalDouble::isPresent)
        ? Optional.of(new PaperPoint(mean(right), mean(up)))
        : Optional.empty();
  }

  private static double mean(List<OptionalDouble> values) {
    return values.stream().mapToDouble(OptionalDouble::getAsDouble).average().orElseThrow();
  }
}
