package org.slatwright.exporter.svg;

import java.io.IOException;
import java.util.Base64;
import java.util.SortedSet;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.w3c.dom.Element;

/**
 * Lettering as text, with the part of the font that it needs inside the file.
 *
 * <p>That part is embedded as it is, not packed: zlib's output differs from one build of it to
 * another, and the same sheet has the same bytes everywhere.
 */
final class EmbeddedLettering implements SheetLettering {

  private static final String ORIGIN =
      "/* A part of "
          + Lettering.FAMILY
          + ", Copyright 2017 IBM Corp., SIL Open Font License 1.1 */";

  private final LetteringFont font;
  private final TextElements elements;
  private final SortedSet<Integer> used = new TreeSet<>();

  EmbeddedLettering(LetteringFont font, TextElements elements) {
    this.font = font;
    this.elements = elements;
  }

  @Override
  public void add(Element parent, Figure.Text text) {
    text.text().codePoints().filter(font::has).forEach(used::add);
    elements.add(parent, text);
  }

  @Override
  public String css() throws IOException {
    String fallback =
        SvgStyle.lettering("'" + LetteringFont.PART_FAMILY + "','" + Lettering.FAMILY + "'");
    return used.isEmpty() ? fallback : fontFace() + fallback;
  }

  private String fontFace() throws IOException {
    String data = Base64.getEncoder().encodeToString(font.subset(used));
    return ORIGIN
        + "\n@font-face{font-family:'"
        + LetteringFont.PART_FAMILY
        + "';src:url(data:font/ttf;base64,"
        + data
        + ") format('truetype')}\n";
  }
}
