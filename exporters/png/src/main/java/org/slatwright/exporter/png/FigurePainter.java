package org.slatwright.exporter.png;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Draws figures, each over those before it. */
final class FigurePainter {

  private final Graphics2D graphics;
  private final GlyphOutlines glyphs;
  private final Pens pens;

  /**
   * With graphics in mm, y up.
   *
   * @param dotMm how large a dot is
   */
  FigurePainter(Graphics2D graphics, GlyphOutlines glyphs, double dotMm) {
    this.graphics = graphics;
    this.glyphs = glyphs;
    this.pens = new Pens(dotMm);
  }

  void paint(List<Figure> figures) throws IOException {
    for (Figure figure : figures) {
      paint(figure);
    }
  }

  private void paint(Figure figure) throws IOException {
    if (figure instanceof Figure.Polyline polyline) {
      draw(path(polyline.points(), polyline.closed()), polyline.line());
    } else if (figure instanceof Figure.Circle circle) {
      draw(shape(circle), circle.line());
    } else if (figure instanceof Figure.Arc arc) {
      draw(shape(arc), arc.line());
    } else if (figure instanceof Figure.Fill fill) {
      fill(path(fill.points(), true), fill.shade());
    } else if (figure instanceof Figure.Text text) {
      fill(shape(text), Figure.Shade.INK);
    } else if (figure instanceof Figure.Dimension dimension) {
      paint(dimension.drawn());
    } else if (figure instanceof Figure.Cluster cluster) {
      paint(cluster.figures());
    } else {
      throw new IllegalArgumentException("no way to draw a " + figure.getClass());
    }
  }

  private void draw(Shape shape, LineKind line) {
    graphics.setColor(colour(Figure.Shade.INK));
    graphics.setStroke(pens.of(line));
    graphics.draw(shape);
  }

  private void fill(Shape shape, Figure.Shade shade) {
    graphics.setColor(colour(shade));
    graphics.fill(shape);
  }

  private static Color colour(Figure.Shade shade) {
    return new Color(shade.grey(), shade.grey(), shade.grey());
  }

  private static Shape path(List<PaperPoint> points, boolean closed) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    PaperPoint first = points.get(0);
    path.moveTo(first.x(), first.y());
    points.subList(1, points.size()).forEach(to -> path.lineTo(to.x(), to.y()));
    if (closed) {
      path.closePath();
    }
    return path;
  }

  private static Shape shape(Figure.Circle circle) {
    return new Ellipse2D.Double(
        circle.centre().x() - circle.radius(),
        circle.centre().y() - circle.radius(),
        2 * circle.radius(),
        2 * circle.radius());
  }

  /** Java's arcs turn counter-clockwise where y runs down. */
  private static Shape shape(Figure.Arc arc) {
    Arc2D shape = new Arc2D.Double();
    shape.setArcByCenter(
        arc.centre().x(),
        arc.centre().y(),
        arc.radius(),
        -arc.startDegrees(),
        -arc.sweepDegrees(),
        Arc2D.OPEN);
    return shape;
  }

  private Shape shape(Figure.Text text) throws IOException {
    PaperPoint start = text.start();
    AffineTransform placing = AffineTransform.getTranslateInstance(start.x(), start.y());
    placing.rotate(Math.toRadians(text.degrees()));
    return placing.createTransformedShape(glyphs.outline(text.text(), text.height()));
  }
}
