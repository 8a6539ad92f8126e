package org.slatwright.exporter.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.NameRecord;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Lettering;

/** The api's numbers against the font file itself, and the part of the font that is embedded. */
class LetteringFontTest {

  private static final int LAST_CODE_POINT = 0x10FFFF;

  @Test
  void everyWidthOfTheApiIsTheFontsAdvance() throws IOException {
    try (TrueTypeFont font = parse(Lettering.openFont().readAllBytes())) {
      CmapLookup glyphIds = font.getUnicodeCmapLookup();
      double em = Lettering.fontSize(1);
      int compared = 0;
      for (int codePoint = 0; codePoint <= LAST_CODE_POINT; codePoint++) {
        int glyphId = glyphIds.getGlyphId(codePoint);
        assertEquals(glyphId != 0, Lettering.has(codePoint), Integer.toHexString(codePoint));
        if (glyphId != 0) {
          double width = Lettering.width(Character.toString(codePoint), 1);
          double advance = font.getAdvanceWidth(glyphId) * em / font.getUnitsPerEm();
          assertEquals(advance, width, 1e-9, Integer.toHexString(codePoint));
          compared++;
        }
      }
      assertTrue(compared > 500, compared + " compared");
    }
  }

  @Test
  void theCapHeightOfTheApiIsTheFonts() throws IOException {
    try (TrueTypeFont font = parse(Lettering.openFont().readAllBytes())) {
      double capHeight = font.getOS2Windows().getCapHeight() / (double) font.getUnitsPerEm();
      assertEquals(capHeight, Lettering.CAP_HEIGHT, 1e-9);
    }
  }

  @Test
  void thePartHasTheGlyphsAskedForAndNoOthers() throws IOException {
    try (LetteringFont whole = LetteringFont.open();
        TrueTypeFont part = parse(whole.subset(codePoints("Hø⅜ 12")))) {
      CmapLookup glyphIds = part.getUnicodeCmapLookup();
      Set<Integer> kept =
          IntStream.rangeClosed(0, 0xFFFF)
              .filter(codePoint -> glyphIds.getGlyphId(codePoint) != 0)
              .boxed()
              .collect(Collectors.toSet());
      assertEquals(codePoints("Hø⅜ 12"), kept);
      for (int codePoint : kept) {
        double advance = part.getAdvanceWidth(glyphIds.getGlyphId(codePoint));
        double width = Lettering.width(Character.toString(codePoint), Lettering.CAP_HEIGHT);
        assertEquals(width, advance / part.getUnitsPerEm(), 1e-9);
      }
    }
  }

  /**
   * Browsers refuse a font that lacks one of these. Source: OpenType 1.9, "Required tables" and
   * "Tables related to TrueType outlines"; version 0 of OS/2 is 78 bytes long.
   */
  @Test
  void thePartHasEveryTableThatABrowserRequires() throws IOException {
    try (LetteringFont whole = LetteringFont.open();
        TrueTypeFont part = parse(whole.subset(codePoints("abc")))) {
      assertEquals(
          Set.of("cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2", "post"),
          part.getTableMap().keySet());
      assertEquals(0, part.getOS2Windows().getVersion());
      assertEquals(78, part.getTableMap().get("OS/2").getLength());
    }
  }

  /** SIL Open Font License 1.1, clause 3: a modified version may not use the reserved name. */
  @Test
  void thePartDoesNotGoByTheReservedName() throws IOException {
    try (LetteringFont whole = LetteringFont.open();
        TrueTypeFont part = parse(whole.subset(codePoints("abc")))) {
      for (NameRecord name : part.getNaming().getNameRecords()) {
        assertFalse(name.getString().contains("Plex"), name.getString());
      }
      assertEquals("Sheet Lettering", part.getNaming().getFontFamily());
    }
  }

  private static Set<Integer> codePoints(String text) {
    return text.codePoints().boxed().collect(Collectors.toCollection(TreeSet::new));
  }

  private static TrueTypeFont parse(byte[] font) throws IOException {
    return new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(font)));
  }
}
