package org.slatwright.exporter.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.w3c.dom.Element;

/**
 * Lettering as outlines, for programs that ignore a font inside the file. A line with a character
 * that the font lacks stays text.
 */
final class OutlinedLettering implements SheetLettering {

  private final LetteringFont font;
  private final SvgDocument svg;
  private final PaperFlip flip;

  OutlinedLettering(LetteringFont font, SvgDocument svg, PaperFlip flip) {
    this.font = font;
    this.svg = svg;
    this.flip = flip;
  }

  @Override
  public void add(Element parent, Figure.Text text) throws IOException {
    if (text.text().codePoints().allMatch(font::has)) {
      addOutline(parent, text);
    } else {
      new TextElements(svg, flip).add(parent, text);
    }
  }

  @Override
  public String css() {
    return SvgStyle.lettering("'" + Lettering.FAMILY + "'");
  }

  private void addOutline(Element parent, Figure.Text text) throws IOException {
    double em = Lettering.fontSize(text.height());
    AffineTransform placing = flip.placing(text.at(), text.degrees(), em);
    placing.translate(-anchor(text) / em, 0);
    Path2D outline = font.outline(text.text());
    outline.transform(placing);
    Element path = svg.addShape(parent, outline, "lettering");
    svg.set(path, "role", "img");
    svg.set(path, "aria-label", text.text());
  }

  /** How far the anchor lies from the left end, in mm. */
  private static double anchor(Figure.Text text) {
    double width = Lettering.width(text.text(), text.height());
    return switch (text.align()) {
      case START -> 0;
      case MIDDLE -> width / 2;
      case END -> width;
    };
  }
}
