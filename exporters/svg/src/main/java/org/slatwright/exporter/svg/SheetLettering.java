package org.slatwright.exporter.svg;

import java.io.IOException;
import org.slatwright.api.drawing.Figure;
import org.w3c.dom.Element;

/** How the lettering of one sheet is spelt. */
sealed interface SheetLettering permits EmbeddedLettering, OutlinedLettering {

  /** Puts a line of lettering at the end of {@code parent}. */
  void add(Element parent, Figure.Text text) throws IOException;

  /** What the style sheet says of it, once all of it is added. */
  String css() throws IOException;
}
