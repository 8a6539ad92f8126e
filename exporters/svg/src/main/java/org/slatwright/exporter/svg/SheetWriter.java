package org.slatwright.exporter.svg;

import java.io.IOException;
import javax.xml.transform.TransformerException;
import org.slatwright.api.export.ExportException;
import org.slatwright.exporter.figures.Drawing;
import org.slatwright.exporter.figures.DrawingWriter;
import org.slatwright.exporter.figures.EmbeddedLettering;
import org.slatwright.exporter.figures.LetteringFont;
import org.slatwright.exporter.figures.OutlinedLettering;
import org.slatwright.exporter.figures.SheetLettering;
import org.slatwright.exporter.figures.SvgDocument;
import org.slatwright.exporter.figures.SvgStyle;
import org.w3c.dom.Element;

/** Writes one drawing as a file that needs no other. */
final class SheetWriter {

  private final Drawing drawing;
  private final SvgDocument svg;
  private final DrawingWriter writer;
  private final SheetLettering lettering;

  SheetWriter(Drawing drawing, LetteringFont font, boolean outlines) {
    this.drawing = drawing;
    this.svg = new SvgDocument();
    this.lettering = outlines ? new OutlinedLettering(font) : new EmbeddedLettering(font);
    this.writer = new DrawingWriter(drawing, svg, lettering);
  }

  /** The file. */
  byte[] write() throws IOException, ExportException {
    Element root = writer.addRoot();
    root.setAttributeNS(null, "preserveAspectRatio", PrintRule.KEPT_CORNER);
    Element style = svg.add(root, "style");
    writer.addViews(root);
    style.setTextContent("\n" + css());
    try {
      return svg.bytes();
    } catch (TransformerException e) {
      throw new ExportException(drawing.name() + " cannot be written as SVG", e);
    }
  }

  private String css() throws IOException {
    SvgStyle style = SvgStyle.BLACK_ON_WHITE;
    PrintRule rule = new PrintRule(drawing.widthMm(), drawing.heightMm());
    String print = rule.css(writer.width(), writer.height());
    return print + style.figures() + lettering.css(style);
  }
}
