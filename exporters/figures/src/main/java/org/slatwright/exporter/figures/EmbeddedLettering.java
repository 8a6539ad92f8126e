package org.slatwright.exporter.figures;

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
public final class EmbeddedLettering extends SheetLettering {

  private static final String ORIGIN =
      "/* A part of "
          + Lettering.FAMILY
          + ", Copyright 2017 IBM Corp., SIL Open Font License 1.1 */";

  private final LetteringFont font;
  private final SortedSet<Integer> used = new TreeSet<>();

  /** Of a file that has nothing in it yet. */
  public EmbeddedLettering(LetteringFont font) {
    this.font = font;
  }

  /** Has the embedded part show {@code text} too, which stands elsewhere in the same file. */
  public void use(String text) {
    text.codePoints().filter(font::has).forEach(used::add);
  }

  @Override
  void add(TextElements elements, Element parent, Figure.Text text) {
    use(text.text());
    elements.add(parent, text);
  }

  @Override
  public String css(SvgStyle style) throws IOException {
    String fallback =
        style.lettering("'" + LetteringFont.PART_FAMILY + "','" + Lettering.FAMILY + "'");
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
