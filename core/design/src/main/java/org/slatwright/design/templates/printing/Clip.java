package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/**
 * Shows what of figures lies in a window: lines and curves exactly up to its edge, texts where they
 * lie in it whole.
 */
record Clip(PaperBox window) {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** The same figures as far as they are seen. */
  List<Figure> of(List<Figure> figures) {
    List<Figure> seen = new ArrayList<>();
    figures.forEach(figure -> seen.addAll(of(figure)));
    return seen;
  }

  private List<Figure> of(Figure figure) {
    if (figure instanceof Figure.Polyline line) {
      return new LineClip(window).of(line);
    } else if (figure instanceof Figure.Circle circle) {
      return new ArcClip(window).of(circle);
    } else if (figure instanceof Figure.Arc arc) {
      return new ArcClip(window).of(arc);
    } else if (figure instanceof Figure.Fill fill) {
      return of(fill);
    } else if (figure instanceof Figure.Text text) {
      return window.contains(TextRoom.of(text)) ? List.of(text) : List.of();
    } else if (figure instanceof Figure.Dimension dimension) {
      List<Figure> drawn = of(dimension.drawn());
      return drawn.isEmpty()
          ? drawn
          : List.of(new Figure.Dimension(dimension.value(), dimension.text(), drawn));
    }
    Figure.Cluster cluster = (Figure.Cluster) figure;
    List<Figure> inner = of(cluster.figures());
    return inner.isEmpty()
        ? inner
        : List.of(new Figure.Cluster(cluster.id(), cluster.title(), inner));
  }

  private List<Figure> of(Figure.Fill fill) {
    if (fill.points().stream().allMatch(window::contains)) {
      return List.of(fill);
    }
    Geometry left = GeometryFixer.fix(polygon(fill)).intersection(FACTORY.toGeometry(envelope()));
    List<Figure> pieces = new ArrayList<>();
    for (int i = 0; i < left.getNumGeometries(); i++) {
      if (left.getGeometryN(i) instanceof Polygon piece && !piece.isEmpty()) {
        pieces.add(new Figure.Fill(corners(piece), fill.shade()));
      }
    }
    return pieces;
  }

  private Envelope envelope() {
    return new Envelope(window.left(), window.right(), window.bottom(), window.top());
  }

  private static Polygon polygon(Figure.Fill fill) {
    List<Coordinate> ring = new ArrayList<>();
    fill.points().forEach(point -> ring.add(new Coordinate(point.x(), point.y())));
    ring.add(ring.get(0).copy());
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  private static List<PaperPoint> corners(Polygon polygon) {
    Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
    return Arrays.stream(ring)
        .limit(ring.length - 1L)
        .map(corner -> new PaperPoint(corner.x, corner.y))
        .toList();
  }
}
