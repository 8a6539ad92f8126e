package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;

/** Draws one sheet on one page: walks its views and figures, and has each spelt. */
final class PageWriter {

  private final PDPageContentStream page;
  private final PageFrame frame;
  private final Pen pen;
  private final PageLettering lettering;

  PageWriter(PDPageContentStream page, PageFrame frame, PDFont font) throws IOException {
    this.page = page;
    this.frame = frame;
    this.pen = new Pen(page, frame);
    this.lettering = new PageLettering(page, frame, font);
  }

  void write(Sheet sheet) throws IOException {
    for (View view : sheet.views()) {
      addAll(view.figures());
    }
  }

  private void addAll(List<Figure> figures) throws IOException {
    for (Figure figure : figures) {
      add(figure);
    }
  }

  private void add(Figure figure) throws IOException {
    if (figure instanceof Figure.Polyline polyline) {
      addLines(polyline);
    } else if (figure instanceof Figure.Circle circle) {
      pen.take(circle.line());
      addCurve(Curve.of(circle));
      page.closeAndStroke();
    } else if (figure instanceof Figure.Arc arc) {
      pen.take(arc.line());
      addCurve(Curve.of(arc));
      page.stroke();
    } else if (figure instanceof Figure.Fill fill) {
      pen.take(fill.shade());
      addPath(fill.points());
      page.fill();
    } else if (figure instanceof Figure.Text text) {
      addLettering(text);
    } else if (figure instanceof Figure.Dimension dimension) {
      addAll(dimension.drawn());
    } else if (figure instanceof Figure.Cluster cluster) {
      addAll(cluster.figures());
    } else {
      throw new IllegalArgumentException("no way to write a " + figure.getClass());
    }
  }

  private void addLines(Figure.Polyline polyline) throws IOException {
    pen.take(polyline.line());
    addPath(polyline.points());
    if (polyline.closed()) {
      page.closeAndStroke();
    } else {
      page.stroke();
    }
  }

  private void addLettering(Figure.Text text) throws IOException {
    if (!text.text().isBlank()) {
      pen.take(Figure.Shade.INK);
      lettering.add(text);
    }
  }

  private void addPath(List<PaperPoint> points) throws IOException {
    moveTo(points.get(0));
    for (PaperPoint point : points.subList(1, points.size())) {
      page.lineTo(frame.x(point), frame.y(point));
    }
  }

  private void addCurve(Curve curve) throws IOException {
    moveTo(curve.start());
    for (Curve.Piece piece : curve.pieces()) {
      page.curveTo(
          frame.x(piece.first()),
          frame.y(piece.first()),
          frame.x(piece.second()),
          frame.y(piece.second()),
          frame.x(piece.end()),
          frame.y(piece.end()));
    }
  }

  private void moveTo(PaperPoint point) throws IOException {
    page.moveTo(frame.x(point), frame.y(point));
  }
}
