package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.slatwright.api.drawing.Figure.Shade;
import org.slatwright.api.drawing.LineKind;

/** What lines and fills of one page are drawn with; said on the page only where it changes. */
final class Pen {

  private static final int BUTT = 0;
  private static final int MITRED = 0;
  private static final int ROUND = 1;

  /** A corner sharper than 29° is cut off, lest its point run far beyond it. */
  private static final float MITRE_LIMIT = 4;

  private static final float WHITE = Shade.PAPER.grey();

  private final PDPageContentStream page;
  private final PageFrame frame;
  private Optional<LineKind> line = Optional.empty();
  private Shade shade = Shade.INK;

  Pen(PDPageContentStream page, PageFrame frame) throws IOException {
    this.page = page;
    this.frame = frame;
    page.setMiterLimit(MITRE_LIMIT);
  }

  /** Draws the next lines in that kind. */
  void take(LineKind kind) throws IOException {
    if (line.filter(kind::equals).isEmpty()) {
      boolean round = kind.isRound();
      page.setLineWidth(frame.points(kind.widthMm()));
      page.setLineDashPattern(dashes(kind.dashesMm()), 0);
      page.setLineCapStyle(round ? ROUND : BUTT);
      page.setLineJoinStyle(round ? ROUND : MITRED);
      line = Optional.of(kind);
    }
  }

  /** Fills the next areas and letters in that shade. */
  void take(Shade next) throws IOException {
    if (shade != next) {
      page.setNonStrokingColor(next.grey() / WHITE);
      shade = next;
    }
  }

  private float[] dashes(List<Double> mm) {
    float[] points = new float[mm.size()];
    for (int i = 0; i < points.length; i++) {
      points[i] = frame.points(mm.get(i));
    }
    return points;
  }
}
