package org.slatwright.exporter.png;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.slatwright.api.drawing.Lettering;

/**
 * The outlines of the letters of the sheets' font. Where it lacks a character stands its sign for
 * that, in the middle of the room that the layout reckoned with.
 */
final class GlyphOutlines implements AutoCloseable {

  private static final int SIGN = 0xFFFD;

  private final TrueTypeFont font;
  private final CmapLookup glyphIds;
  private final Map<Integer, Path2D> glyphs = new HashMap<>();

  private GlyphOutlines(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphIds = font.getUnicodeCmapLookup();
  }

  static GlyphOutlines open() throws IOException {
    try (InputStream file = Lettering.openFont()) {
      return new GlyphOutlines(new TTFParser().parse(new RandomAccessReadBuffer(file)));
    }
  }

  /**
   * A line of lettering.
   *
   * @param height of its capitals, in mm
   * @return in mm from the left of its baseline, y up
   */
  Path2D outline(String text, double height) throws IOException {
    Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double size = Lettering.fontSize(height) / font.getUnitsPerEm();
    double along = 0;
    for (int codePoint : text.codePoints().toArray()) {
      double room = width(codePoint, height);
      int shown = Lettering.has(codePoint) ? codePoint : SIGN;
      AffineTransform placing =
          new AffineTransform(size, 0, 0, size, along + (room - width(shown, height)) / 2, 0);
      line.append(glyph(shown).getPathIterator(placing), false);
      along += room;
    }
    return line;
  }

  /** In units of the font; nothing for a blank. */
  private Path2D glyph(int codePoint) throws IOException {
    Path2D known = glyphs.get(codePoint);
    if (known != null) {
      return known;
    }
    GlyphData glyph = font.getGlyph().getGlyph(glyphIds.getGlyphId(codePoint));
    Path2D path = glyph == null ? new Path2D.Float() : glyph.getPath();
    glyphs.put(codePoint, path);
    return path;
  }

  private static double width(int codePoint, double height) {
    return Lettering.width(Character.toString(codePoint), height);
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
