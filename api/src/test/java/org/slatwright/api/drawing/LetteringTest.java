package org.slatwright.api.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import org.junit.jupiter.api.Test;

/**
 * Advance widths of glyphs, in thousandths of the font size, are those of the hmtx table of IBM
 * Plex Sans Condensed Regular as fontTools 4.66.1 reads it.
 */
class LetteringTest {

  private static final double TIGHT = 1e-9;

  /** Capitals as high as the font's OS/2 table says make the font size 1000. */
  private static final double FULL_SIZE = 698;

  @Test
  void textRunsAsFarAsItsGlyphsAdvance() {
    assertEquals(4 * 540, Lettering.width("1500", FULL_SIZE), TIGHT);
    assertEquals(638 + 540 + 540, Lettering.width("Ø10", FULL_SIZE), TIGHT);
    assertEquals(760, Lettering.width("½", FULL_SIZE), TIGHT);
    // 4 4 _ × _ 7 0 _ m m
    assertEquals(5 * 540 + 3 * 212 + 2 * 787, Lettering.width("44 × 70 mm", FULL_SIZE), TIGHT);
    // S e e d - t r a y _ r a c k
    assertEquals(
        525 + 495 + 495 + 524 + 360 + 318 + 332 + 483 + 451 + 212 + 332 + 483 + 454 + 477,
        Lettering.width("Seed-tray rack", FULL_SIZE),
        TIGHT);
  }

  @Test
  void widthGrowsWithTheHeight() {
    // 2160 thousandths of 3.5 / 0.698 = 5.0143 mm
    assertEquals(10.830945, Lettering.width("1500", 3.5), 1e-6);
    assertEquals(2 * Lettering.width("1500", 3.5), Lettering.width("1500", 7), TIGHT);
  }

  @Test
  void noTextRunsNowhere() {
    assertEquals(0, Lettering.width("", 3.5), TIGHT);
  }

  @Test
  void aCharacterThatTheFontLacksIsReckonedAsWideAsTheFontIsHigh() {
    assertFalse(Lettering.has('日'));
    assertEquals(1000, Lettering.width("日", FULL_SIZE), TIGHT);
    assertEquals(1000, Lettering.width("🪴", FULL_SIZE), TIGHT, "one code point, not two");
  }

  @Test
  void everyCharacterOfADimensionIsInTheFont() {
    "0123456789.,-/ ×Ø\"'½¼¾⅛⅜⅝⅞".codePoints().forEach(c -> assertTrue(Lettering.has(c), "" + c));
  }

  /** OpenType: a font with TrueType outlines starts with the version 1.0, 00 01 00 00. */
  @Test
  void theFontComesWithTheApi() throws IOException {
    try (InputStream font = Lettering.openFont()) {
      assertEquals(0x00010000, ByteBuffer.wrap(font.readNBytes(4)).getInt());
    }
  }
}
