package org.slatwright.exporter.figures;

import java.io.IOException;
import org.slatwright.api.drawing.Figure;
import org.w3c.dom.Element;

/** How the lettering of one file is spelt, however many drawings it has. */
public abstract sealed class SheetLettering permits EmbeddedLettering, OutlinedLettering {

  /** Puts a line of lettering at the end of {@code parent}. */
  abstract void add(TextElements elements, Element parent, Figure.Text text) throws IOException;

  /** What the style sheet says of it, once all of it is added. */
  public abstract String css(SvgStyle style) throws IOException;
}
