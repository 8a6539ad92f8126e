package org.slatwright.exporter.figures;

import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.w3c.dom.Element;

/**
 * Lettering as outlines, for programs that ignore a font inside the file. A line with a character
 * that the font lacks stays text.
 */
public final class OutlinedLettering extends SheetLettering {

  private final LetteringFont font;

  /** Of any file. */
  public OutlinedLettering(LetteringFont font) {
    this.font = font;
  }

  @Override
  void add(TextElements elements, Element parent, Figure.Text text) throws IOException {
    if (text.text().codePoints().allMatch(font::has)) {
      addOutline(elements, parent, text);
    } else {
      elements.add(parent, text);
    }
  }

  @Override
  public String css(SvgStyle style) {
    return style.lettering("'" + Lettering.FAMILY + "'");
  }

  private void addOutline(TextElements elements, Element parent, Figure.Text text)
      throws IOException {
    SvgDocument svg = elements.svg();
    Element path = svg.addShape(parent, font.outline(text.text()), "lettering");
    svg.set(path, "transform", placing(elements, text));
    svg.set(path, "role", "img");
    svg.set(path, "aria-label", text.text());
  }

  /**
   * From the units of the font, y up, to the place on the paper. The glyphs keep their whole
   * numbers: exact, and half as long to write as millimetres.
   */
  private String placing(TextElements elements, Figure.Text text) throws IOException {
    double size = Lettering.fontSize(text.height());
    double toAnchor = Lettering.width(text.text(), text.height()) * text.align().part();
    PaperFlip flip = elements.flip();
    SvgDocument svg = elements.svg();
    return String.join(
        " ",
        call(svg, "translate", flip.x(text.at()), flip.y(text.at())),
        call(svg, "rotate", flip.turn(text.degrees())),
        call(svg, "scale", size, -size),
        call(svg, "scale", font.unit()),
        call(svg, "translate", -toAnchor / size / font.unit(), 0));
  }

  private static String call(SvgDocument svg, String function, double... values) {
    return function
        + Arrays.stream(values).mapToObj(svg::number).collect(Collectors.joining(" ", "(", ")"));
  }
}
