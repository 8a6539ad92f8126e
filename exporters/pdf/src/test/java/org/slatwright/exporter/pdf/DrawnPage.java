package org.slatwright.exporter.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.slatwright.api.drawing.PaperPoint;

/** The paths of a page as PDFBox reads them back, in millimetres. */
final class DrawnPage extends PDFGraphicsStreamEngine {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private final List<Path> paths = new ArrayList<>();
  private List<PaperPoint> points = new ArrayList<>();
  private int curves;
  private boolean closed;

  private DrawnPage(PDPage page) {
    super(page);
  }

  /** In drawing order. */
  static List<Path> paths(PDPage page) throws IOException {
    DrawnPage drawn = new DrawnPage(page);
    drawn.processPage(page);
    return drawn.paths;
  }

  /**
   * A path.
   *
   * @param points where its pieces begin and end
   * @param curves how many of them are no straight lines
   * @param grey what it is filled with, or -1 when it is drawn
   */
  record Path(
      List<PaperPoint> points,
      int curves,
      boolean closed,
      float grey,
      double width,
      List<Double> dashes,
      int cap,
      int join) {}

  @Override
  public void moveTo(float x, float y) {
    points.add(at(x, y));
  }

  @Override
  public void lineTo(float x, float y) {
    points.add(at(x, y));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    points.add(at(x3, y3));
    curves++;
  }

  @Override
  public Point2D getCurrentPoint() {
    PaperPoint last = points.get(points.size() - 1);
    return new Point2D.Double(last.x() * POINTS_PER_MM, last.y() * POINTS_PER_MM);
  }

  @Override
  public void closePath() {
    closed = true;
  }

  @Override
  public void strokePath() {
    end(-1);
  }

  @Override
  public void fillPath(int windingRule) {
    end(getGraphicsState().getNonStrokingColor().getComponents()[0]);
  }

  private void end(float grey) {
    PDGraphicsState state = getGraphicsState();
    float[] dashes = state.getLineDashPattern().getDashArray();
    List<Double> dashesMm = new ArrayList<>();
    for (float dash : dashes) {
      dashesMm.add(dash / POINTS_PER_MM);
    }
    paths.add(
        new Path(
            List.copyOf(points),
            curves,
            closed,
            grey,
            state.getLineWidth() / POINTS_PER_MM,
            dashesMm,
            state.getLineCap(),
            state.getLineJoin()));
    points = new ArrayList<>();
    curves = 0;
    closed = false;
  }

  private static PaperPoint at(float x, float y) {
    return new PaperPoint(x / POINTS_PER_MM, y / POINTS_PER_MM);
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    throw unexpected("a rectangle");
  }

  @Override
  public void drawImage(PDImage image) {
    throw unexpected("an image");
  }

  @Override
  public void clip(int windingRule) {
    throw unexpected("clipping");
  }

  @Override
  public void endPath() {
    throw unexpected("a path that is not drawn");
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    throw unexpected("a path both filled and drawn");
  }

  @Override
  public void shadingFill(COSName shading) {
    throw unexpected("a shading");
  }

  private static AssertionError unexpected(String what) {
    return new AssertionError(what + " on a page");
  }
}
