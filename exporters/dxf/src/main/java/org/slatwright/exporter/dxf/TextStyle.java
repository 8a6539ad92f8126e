package org.slatwright.exporter.dxf;

import java.io.IOException;

/** The one text style of a file: any height, upright, in the stroke font that every reader has. */
final class TextStyle {

  private TextStyle() {}

  /** What follows the name of a STYLE record, the same in every version. */
  static void body(DxfTagWriter tags) throws IOException {
    tags.whole(70, 0);
    tags.real(40, 0);
    tags.real(41, 1);
    tags.real(50, 0);
    tags.whole(71, 0);
    tags.real(42, 2.5);
    tags.word(3, "txt");
    tags.word(4, "");
  }
}
