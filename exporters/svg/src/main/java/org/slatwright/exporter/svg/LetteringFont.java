package org.slatwright.exporter.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.SortedSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.slatwright.api.drawing.Lettering;

/** The font of the sheets, opened: its glyphs, and parts of it to embed. */
final class LetteringFont implements AutoCloseable {

  /**
   * What a browser needs to draw glyphs. Without {@code name}, since a part of the font may not go
   * by the font's own name, and without {@code GPOS}, since text is laid out without kerning.
   */
  private static final List<String> TABLES =
      List.of("cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "OS/2", "post");

  private final TrueTypeFont font;
  private final CmapLookup glyphIds;

  private LetteringFont(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphIds = font.getUnicodeCmapLookup();
  }

  static LetteringFont open() throws IOException {
    try (InputStream file = Lettering.openFont()) {
      return new LetteringFont(new TTFParser().parse(new RandomAccessReadBuffer(file)));
    }
  }

  /** Whether there is a glyph for {@code codePoint}. */
  boolean has(int codePoint) {
    return glyphIds.getGlyphId(codePoint) != 0;
  }

  /** A TrueType font with the glyphs of those characters, all of which this font has. */
  byte[] subset(SortedSet<Integer> codePoints) throws IOException {
    TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
    subsetter.addAll(codePoints);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    subsetter.writeToStream(bytes);
    return bytes.toByteArray();
  }

  /** The outline of a line of text in em, from the left end of its baseline, y up. */
  Path2D outline(String text) throws IOException {
    Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
    int advance = 0;
    for (int codePoint : text.codePoints().toArray()) {
      int glyphId = glyphIds.getGlyphId(codePoint);
      GlyphData glyph = font.getGlyph().getGlyph(glyphId);
      if (glyph != null) {
        AffineTransform along = AffineTransform.getTranslateInstance(advance, 0);
        line.append(glyph.getPath().getPathIterator(along), false);
      }
      advance += font.getAdvanceWidth(glyphId);
    }
    double em = 1.0 / font.getUnitsPerEm();
    line.transform(AffineTransform.getScaleInstance(em, em));
    return line;
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
