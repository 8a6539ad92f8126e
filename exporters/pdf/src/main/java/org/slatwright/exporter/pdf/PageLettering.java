package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.PaperPoint;

/**
 * The lettering of one page. Where the font lacks a character stands its sign for that, as wide as
 * the layout reckoned with; whoever copies or searches the text finds what was meant.
 */
final class PageLettering {

  private static final String SIGN = "\uFFFD";

  /** What {@code TJ} counts in (ISO 32000-1, 9.4.3), backwards. */
  private static final double THOUSANDTHS = 1000;

  private final PDPageContentStream page;
  private final PageFrame frame;
  private final PDFont font;

  PageLettering(PDPageContentStream page, PageFrame frame, PDFont font) {
    this.page = page;
    this.frame = frame;
    this.font = font;
  }

  void add(Figure.Text text) throws IOException {
    page.beginText();
    // The size is in the matrix, where its four decimals count for more.
    page.setFont(font, 1);
    page.setTextMatrix(placing(text));
    for (Run run : Run.of(text.text())) {
      if (run.inFont()) {
        page.showText(run.text());
      } else {
        addLacking(run.text());
      }
    }
    page.endText();
  }

  /**
   * The signs, and in the page itself what they mean: some readers take it from there alone, and
   * PDFBox has no other way to write it there.
   */
  @SuppressWarnings("deprecation")
  private void addLacking(String text) throws IOException {
    String meant = new COSString(text).toHexString();
    page.appendRawCommands("/Span <</ActualText <" + meant + ">>> BDC\n");
    page.showTextWithPositioning(signs(text));
    page.endMarkedContent();
  }

  /** The sign for one that is lacking, as often as there are, each in the middle of its room. */
  private static Object[] signs(String lacking) {
    int count = lacking.codePointCount(0, lacking.length());
    double beside = (ems(lacking) / count - ems(SIGN)) / 2;
    Float on = (float) (-beside * THOUSANDTHS);
    return Collections.nCopies(count, List.of(on, SIGN, on)).stream()
        .flatMap(List::stream)
        .toArray();
  }

  /** How far it runs, in font sizes. */
  private static double ems(String text) {
    return Lettering.width(text, Lettering.CAP_HEIGHT);
  }

  /** Where the first letter stands, how large and how turned. */
  private Matrix placing(Figure.Text text) {
    double angle = Math.toRadians(text.degrees());
    PaperPoint start = text.start();
    double size = Lettering.fontSize(text.height());
    double right = size * frame.stretch().across();
    double up = size * frame.stretch().up();
    return new Matrix(
        frame.points(right * Math.cos(angle)),
        frame.points(up * Math.sin(angle)),
        frame.points(-right * Math.sin(angle)),
        frame.points(up * Math.cos(angle)),
        frame.x(start),
        frame.y(start));
  }
}
