package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;

/**
 * A sheet beside the page that some program drew of it: how far lines along the edges of the paper
 * and circles lie from their places, in mm. A line is looked at where no other ink is beside it.
 */
public final class SeenPage {

  /** From line to line, and from hole to hole. */
  private static final double BOUND = 0.05;

  /** Of the whole page: a browser rounds the size of the paper. */
  private static final double PAGE_BOUND = 0.3;

  /** A part of the lines: others have something beside them all along. */
  private static final double LEAST_SEEN = 0.9;

  /** Shorter ones have no room beside their ends. */
  private static final double SHORTEST = 2.5;

  private static final double SMALLEST_RADIUS = 1.5;
  private static final double ALONG_AN_EDGE = 1e-6;

  /** What is further off than this less half a line is not found. */
  private static final double REACH = 0.45;

  /** A stretch of ink that differs by a little over a dot is not that line alone. */
  private static final double LINE_WITHIN = 0.045;

  /** Likewise across the slant of a circle. */
  private static final double CIRCLE_WITHIN = 0.08;

  /** Along a line, where it is looked at. */
  private static final int PLACES = 21;

  private static final int LEAST_PLACES = 5;

  /** A part of a line, near either end, where others meet it. */
  private static final double END = 0.2;

  private static final double[] CROSSINGS_DEGREES = {45, 40, 50, 35, 55, 30, 60};

  private final Sheet sheet;
  private final Ink ink;

  /** Of a sheet and a page of the same size. */
  public SeenPage(Sheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  /** What it is the page of. */
  Sheet sheet() {
    return sheet;
  }

  /**
   * Any two lines along one edge of the paper, and any two circles, are as far apart as they should
   * be: what lies furthest to one side of its place and what lies furthest to the other differ by
   * no more than that. The page as a whole may lie a little beside its place, which no one
   * measures.
   */
  public void assertTrueToSize() {
    List<Figure> figures =
        sheet.views().stream()
            .filter(SeenPage::isAtFullScale)
            .flatMap(view -> leaves(view.figures()))
            .toList();
    List<Segment> lines =
        figures.stream().flatMap(SeenPage::edges).filter(SeenPage::isMeasured).toList();
    List<PaperPoint> circles = circles(figures).map(this::off).toList();
    Predicate<Segment> level = Segment::isLevel;
    double[] right =
        Stream.concat(off(lines, level.negate()), circles.stream().map(PaperPoint::x))
            .mapToDouble(Double::doubleValue)
            .toArray();
    double[] up =
        Stream.concat(off(lines, level), circles.stream().map(PaperPoint::y))
            .mapToDouble(Double::doubleValue)
            .toArray();
    double seen = right.length + up.length - 2.0 * circles.size();
    assertTrue(
        seen >= LEAST_SEEN * lines.size(),
        () -> seen + " of " + lines.size() + " lines are seen on " + sheet.name());
    assertSpread(right, "across");
    assertSpread(up, "up");
  }

  /** A template, or the rules and the square to check the print by. */
  private static boolean isAtFullScale(View view) {
    return view.id().equals("checks") || view.scale().equals(Optional.of(new Scale(1, 1)));
  }

  private Stream<Double> off(List<Segment> lines, Predicate<Segment> which) {
    return lines.stream().filter(which).map(this::off).flatMap(off -> off.stream().boxed());
  }

  private void assertSpread(double[] off, String way) {
    DoubleSummaryStatistics all = DoubleStream.of(off).summaryStatistics();
    assertEquals(
        0,
        all.getMax() - all.getMin(),
        BOUND,
        () -> sheet.name() + " " + way + " from " + all.getMin() + " to " + all.getMax());
    assertEquals(0, all.getAverage(), PAGE_BOUND, () -> "place " + way + " of " + sheet.name());
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
   * @param from where it starts, either way
   */
  record Segment(PaperPoint from, PaperPoint to, LineKind kind) {

    boolean isLevel() {
      return Math.abs(to.y() - from.y()) < ALONG_AN_EDGE;
    }

    boolean isUpright() {
      return Math.abs(to.x() - from.x()) < ALONG_AN_EDGE;
    }

    double top() {
      return Math.max(from.y(), to.y());
    }

    double length() {
      return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }
  }

  /** The lines of a figure along the edges of the paper. */
  static Stream<Segment> edges(Figure figure) {
    if (!(figure instanceof Figure.Polyline polyline)) {
      return Stream.empty();
    }
    List<PaperPoint> points = polyline.points();
    int count = polyline.closed() ? points.size() : points.size() - 1;
    return IntStream.range(0, count)
        .mapToObj(
            i -> new Segment(points.get(i), points.get((i + 1) % points.size()), polyline.line()))
        .filter(line -> line.isLevel() || line.isUpright());
  }

  private static boolean isMeasured(Segment line) {
    return line.kind().dashesMm().isEmpty() && line.length() >= SHORTEST;
  }

  /** Those that are large enough. */
  static Stream<Figure.Circle> circles(List<Figure> figures) {
    return leaves(figures)
        .filter(figure -> figure instanceof Figure.Circle)
        .map(figure -> (Figure.Circle) figure)
        .filter(circle -> circle.radius() >= SMALLEST_RADIUS);
  }

  /** How far up from its place a level line lies, or to the right an upright one. */
  OptionalDouble off(Segment line) {
    double[] seen =
        IntStream.range(0, PLACES)
            .mapToObj(i -> off(line, END + (1 - 2 * END) * i / (PLACES - 1)))
            .flatMapToDouble(OptionalDouble::stream)
            .sorted()
            .toArray();
    return seen.length < LEAST_PLACES
        ? OptionalDouble.empty()
        : OptionalDouble.of(seen[seen.length / 2]);
  }

  private OptionalDouble off(Segment line, double part) {
    double width = line.kind().widthMm();
    double x = line.from().x() + part * (line.to().x() - line.from().x());
    double y = line.from().y() + part * (line.to().y() - line.from().y());
    return line.isLevel()
        ? off(ink.up(x, y - REACH, y + REACH), width, LINE_WITHIN, y)
        : off(ink.along(y, x - REACH, x + REACH), width, LINE_WITHIN, x);
  }

  private static OptionalDouble off(
      Ink.Stretch stretch, double width, double within, double place) {
    return Math.abs(stretch.length() - width) < within
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
            .map(
                at ->
                    off(
                        ink.along(y + far, at - 2 * REACH, at + 2 * REACH),
                        width,
                        CIRCLE_WITHIN,
                        at))
            .toList();
    List<OptionalDouble> up =
        Stream.of(y - near, y + near)
            .map(
                at ->
                    off(ink.up(x + far, at - 2 * REACH, at + 2 * REACH), width, CIRCLE_WITHIN, at))
            .toList();
    return Stream.concat(right.stream(), up.stream()).allMatch(OptionalDouble::isPresent)
        ? Optional.of(new PaperPoint(mean(right), mean(up)))
        : Optional.empty();
  }

  private static double mean(List<OptionalDouble> values) {
    return values.stream().mapToDouble(OptionalDouble::getAsDouble).average().orElseThrow();
  }
}
