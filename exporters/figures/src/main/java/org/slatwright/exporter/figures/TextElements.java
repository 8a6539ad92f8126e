package org.slatwright.exporter.figures;

import java.util.Map;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.Lettering;
import org.w3c.dom.Element;

/**
 * Spells lettering as text.
 *
 * @param svg where it goes
 * @param flip of its paper
 */
record TextElements(SvgDocument svg, PaperFlip flip) {

  private static final Map<Align, String> ANCHOR =
      Map.of(Align.START, "start", Align.MIDDLE, "middle", Align.END, "end");

  /** Puts a line of text at the end of {@code parent}. */
  void add(Element parent, Figure.Text text) {
    Element element = svg.addText(parent, "text", text.text());
    String x = svg.number(flip.x(text.at()));
    String y = svg.number(flip.y(text.at()));
    svg.set(element, "class", "lettering");
    svg.set(element, "x", x);
    svg.set(element, "y", y);
    svg.set(element, "font-size", svg.number(Lettering.fontSize(text.height())));
    svg.set(element, "text-anchor", ANCHOR.get(text.align()));
    if (text.degrees() != 0) {
      String turn = svg.number(flip.turn(text.degrees()));
      svg.set(element, "transform", "rotate(" + turn + " " + x + " " + y + ")");
    }
    if (!text.text().equals(text.text().strip().replaceAll("\\s+", " "))) {
      svg.keepSpaces(element);
    }
  }
}
