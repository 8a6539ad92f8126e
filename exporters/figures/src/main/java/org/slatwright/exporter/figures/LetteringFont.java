package org.slatwright.exporter.figures;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.NameRecord;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.slatwright.api.drawing.Lettering;

/** The font of the sheets, opened: its glyphs, and parts of it to embed. */
public final class LetteringFont implements AutoCloseable {

  /** The name of the embedded part: the licence reserves the font's own (OFL 1.1, clause 3). */
  static final String PART_FAMILY = "Sheet Lettering";

  private static final Set<Integer> OWN_NAMES =
      Set.of(
          NameRecord.NAME_FONT_FAMILY_NAME,
          NameRecord.NAME_UNIQUE_FONT_ID,
          NameRecord.NAME_FULL_FONT_NAME,
          NameRecord.NAME_POSTSCRIPT_NAME);

  /** What a browser needs. Without {@code GPOS}, since text is laid out without kerning. */
  private static final List<String> TABLES =
      List.of("cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2", "post");

  private final TrueTypeFont font;
  private final CmapLookup glyphIds;

  private LetteringFont(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphIds = font.getUnicodeCmapLookup();
  }

  /** The font that comes with the api. */
  public static LetteringFont open() throws IOException {
    try (InputStream file = Lettering.openFont()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
      prepareParts(font);
      return new LetteringFont(font);
    }
  }

  private static void prepareParts(TrueTypeFont font) throws IOException {
    for (NameRecord name : font.getNaming().getNameRecords()) {
      if (OWN_NAMES.contains(name.getNameId())) {
        boolean postScript = name.getNameId() == NameRecord.NAME_POSTSCRIPT_NAME;
        name.setString(postScript ? PART_FAMILY.replace(" ", "") : PART_FAMILY);
      }
    }
    // The subsetter writes the fields of version 0, whatever version the table says it has.
    font.getOS2Windows().setVersion(0);
  }

  /** Whether there is a glyph for {@code codePoint}. */
  boolean has(int codePoint) {
    return glyphIds.getGlyphId(codePoint) != 0;
  }

  /** A font with the glyphs of those characters, all of which this font has, as a TrueType file. */
  byte[] subset(Set<Integer> codePoints) throws IOException {
    TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
    subsetter.addAll(codePoints);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    subsetter.writeToStream(bytes);
    return bytes.toByteArray();
  }

  /** The outline of a line of text in units of the font, from the left of its baseline, y up. */
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
    return line;
  }

  /** One unit of the font, as a part of the font size. */
  double unit() throws IOException {
    return 1.0 / font.getUnitsPerEm();
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
