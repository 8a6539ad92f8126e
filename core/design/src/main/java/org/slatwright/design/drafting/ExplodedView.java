package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.View;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Part;
import org.slatwright.design.drafting.Explosion.Placed;

/**
 * Parts drawn apart in isometric axonometry, right sides shaded, with chain lines along the ways
 * that they go together, and the marks of the parts list in balloons.
 */
final class ExplodedView {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Left free at either side, where there is always room for a balloon. */
  static final double BESIDE = 8;

  /** Of a break, in mm on paper. */
  private static final double PITCH = 1.6;

  private static final double TOOTH = 0.3;

  /** Parts of the length of a piece at which a leader may end. */
  private static final List<Double> PLACES = List.of(0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9);

  private final Explosion explosion;
  private final PaperBox room;
  private final IsometricSolids solids;
  private final IsometricPaper paper;

  /** In the middle of {@code room}. */
  ExplodedView(Explosion explosion, PaperBox room) {
    this.explosion = explosion;
    this.room = room;
    this.solids =
        new IsometricSolids(
            new IsometricBoxes(explosion.bars().stream().map(ExplodedView::isometric).toList()),
            explosion.dowels().stream().map(dowel -> new IsometricRod(isometric(dowel))).toList());
    this.paper =
        IsometricPaper.fitted(
            explosion.solids().map(Isometric::of).toList(), room.grown(-BESIDE, 0));
  }

  private static Isometric isometric(Placed placed) {
    return Isometric.of(placed.box());
  }

  /** Millimetres on paper for one of a length along an axis. */
  double factor() {
    return paper.factor();
  }

  View view() {
    List<Figure> figures = new ArrayList<>();
    figures.add(shade());
    figures.addAll(bars());
    figures.addAll(dowels());
    figures.add(new Figure.Cluster("exploded-holes", "holes", mouths()));
    figures.add(new Figure.Cluster("exploded-ways", "what goes where", ways()));
    figures.addAll(balloons(figures));
    return new View("exploded", "Exploded view", Optional.empty(), figures);
  }

  /** Of bars alone; what is seen of a dowel covers it. */
  private Figure shade() {
    List<IsometricEdge> edges =
        IsometricLines.of(solids.boxes()).stream().flatMap(List::stream).toList();
    Stream<Figure> sides =
        IsometricFaces.rightSides(solids.boxes(), edges).stream()
            .map(corners -> paper.fill(corners, Figure.Shade.TINT));
    Stream<Figure> rods =
        solids.rods().stream()
            .flatMap(this::uncovered)
            .map(corners -> paper.fill(corners, Figure.Shade.PAPER));
    return new Figure.Cluster("exploded-shade", "right sides", Stream.concat(sides, rods).toList());
  }

  private Stream<List<Coordinate>> uncovered(IsometricRod rod) {
    Geometry rest = polygon(rod.outline());
    for (List<Coordinate> outline : solids.outlinesBefore(rod.box())) {
      rest = rest.difference(polygon(outline));
    }
    List<List<Coordinate>> parts = new ArrayList<>();
    for (int i = 0; i < rest.getNumGeometries(); i++) {
      if (rest.getGeometryN(i) instanceof Polygon part && !part.isEmpty()) {
        Coordinate[] ring = part.getExteriorRing().getCoordinates();
        parts.add(List.of(ring).subList(0, ring.length - 1));
      }
    }
    return parts.stream();
  }

  private static Polygon polygon(List<Coordinate> corners) {
    List<Coordinate> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  private List<Figure> bars() {
    List<List<IsometricEdge>> edges = IsometricLines.of(solids.boxes().all(), solids::before);
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Placed bar = explosion.bars().get(i);
      figures.addAll(cluster(bar, edges.get(i).stream().map(edge -> line(bar, edge)).toList()));
    }
    return figures;
  }

  private static List<Figure> cluster(Placed placed, List<Figure> lines) {
    String id = placed.piece().id();
    return lines.isEmpty()
        ? List.of()
        : List.of(
            new Figure.Cluster("exploded-" + id, placed.piece().part().name() + " " + id, lines));
  }

  private Figure line(Placed bar, IsometricEdge edge) {
    return bar.cut() && isAtRightEnd(isometric(bar), edge)
        ? broken(paper.at(edge.start()), paper.at(edge.end()))
        : paper.line(edge, LineKind.THIN);
  }

  private static boolean isAtRightEnd(Isometric bar, IsometricEdge edge) {
    IsometricEdge.Line line = edge.line();
    long right = bar.x().high();
    return line.axis() == Axis.Y
        && (line.at() == right - bar.z().high() || line.at() == right - bar.z().low());
  }

  /** A break: the piece runs on. */
  private static Figure broken(PaperPoint from, PaperPoint to) {
    double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    int teeth = Math.max(1, (int) Math.round(length / PITCH));
    double acrossX = -(to.y() - from.y()) / length * TOOTH;
    double acrossY = (to.x() - from.x()) / length * TOOTH;
    List<PaperPoint> points = new ArrayList<>(List.of(from));
    for (int i = 0; i < teeth; i++) {
      for (double part : new double[] {0.25, 0.75}) {
        double along = (i + part) / teeth;
        double side = part < 0.5 ? 1 : -1;
        points.add(
            from.moved(
                along * (to.x() - from.x()) + side * acrossX,
                along * (to.y() - from.y()) + side * acrossY));
      }
    }
    points.add(to);
    return new Figure.Polyline(points, false, LineKind.THIN);
  }

  private List<Figure> dowels() {
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < solids.rods().size(); i++) {
      IsometricRod rod = solids.rods().get(i);
      List<Figure> lines = new ArrayList<>();
      lines.addAll(curve(rod.front(), rod.box()));
      lines.addAll(curve(rod.rear(), rod.box()));
      rod.sides().forEach(side -> lines.addAll(straight(side, rod.box(), LineKind.THIN)));
      figures.addAll(cluster(explosion.dowels().get(i), lines));
    }
    return figures;
  }

  private List<Figure> mouths() {
    return explosion.mouths().stream()
        .map(Isometric::of)
        .flatMap(box -> curve(new IsometricRod(box).front(), box).stream())
        .toList();
  }

  private List<Figure> ways() {
    return explosion.ways().stream()
        .map(Isometric::of)
        .flatMap(way -> straight(IsometricEdge.ofLine(way), way, LineKind.CENTRE).stream())
        .toList();
  }

  /** One for each part that is shown. */
  private List<Figure> balloons(List<Figure> drawn) {
    BalloonSpots spots = new BalloonSpots(drawn, room);
    Map<Part, List<PaperPoint>> ends = new LinkedHashMap<>();
    for (Placed bar : explosion.bars()) {
      places(bar).forEach(end -> ends(ends, bar).add(paper.at(end)));
    }
    for (int i = 0; i < solids.rods().size(); i++) {
      IsometricRod rod = solids.rods().get(i);
      if (solids.isSeen(rod)) {
        ends(ends, explosion.dowels().get(i)).add(paper.at(rod.middle()));
      }
    }
    return ends.entrySet().stream()
        .flatMap(entry -> spots.balloon(entry.getKey().mark(), entry.getValue()).stream())
        .toList();
  }

  private static List<PaperPoint> ends(Map<Part, List<PaperPoint>> ends, Placed placed) {
    return ends.computeIfAbsent(placed.piece().part(), part -> new ArrayList<>());
  }

  /** Some on its faces, where it is seen. */
  private Stream<Coordinate> places(Placed bar) {
    Isometric box = isometric(bar);
    return PLACES.stream()
        .flatMap(along -> box.onFaces(along, 0.5))
        .filter(place -> solids.isSeen(box, place.x, place.y));
  }

  private List<Figure> straight(IsometricEdge edge, Isometric box, LineKind kind) {
    return IsometricLines.visibleBehind(edge, solids.before(box)).stream()
        .map(seen -> paper.line(seen, kind))
        .toList();
  }

  private List<Figure> curve(List<Coordinate> curve, Isometric box) {
    return solids.seen(curve, box).stream()
        .<Figure>map(
            stretch ->
                new Figure.Polyline(stretch.stream().map(paper::at).toList(), false, LineKind.THIN))
        .toList();
  }
}
