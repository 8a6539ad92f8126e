package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A page of 100 × 80 pixels of about a millimetre, with one block on it whose edges are half grey.
 */
class InkTest {

  private static final int DOTS_PER_INCH = 25;
  private static final double PIXEL = 25.4 / DOTS_PER_INCH;
  private static final int WIDTH = 100;
  private static final int HEIGHT = 80;
  private static final int HALF = 128;

  @TempDir private Path folder;
  private Ink ink;

  /** Dark from column 20 to 39 and from row 10 to 29; one pixel further right it is half dark. */
  @BeforeEach
  void draw() throws IOException {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
    for (int row = 0; row < HEIGHT; row++) {
      for (int column = 0; column < WIDTH; column++) {
        boolean inRow = row >= 10 && row < 30;
        int grey = inRow && column >= 20 && column < 40 ? 0 : inRow && column == 40 ? HALF : 255;
        image.getRaster().setSample(column, row, 0, grey);
      }
    }
    Path file = folder.resolve("page.png");
    ImageIO.write(image, "png", file.toFile());
    ink = Ink.read(file, DOTS_PER_INCH);
  }

  @Test
  void thePageIsAsLargeAsItsPixels() {
    assertEquals(WIDTH * PIXEL, ink.widthMm(), 1e-9);
    assertEquals(HEIGHT * PIXEL, ink.heightMm(), 1e-9);
  }

  @Test
  void aGreyPixelCountsInPart() {
    Ink.Stretch along = ink.along(60.5 * PIXEL, 0, 99 * PIXEL);
    assertEquals(20.5 * PIXEL, along.length(), 0.01);
    assertEquals((20 * 30 + 0.5 * 40.5) / 20.5 * PIXEL, along.middle(), 0.01);
  }

  @Test
  void upIsFromTheFootOfThePage() {
    Ink.Stretch up = ink.up(25.5 * PIXEL, 0, 79 * PIXEL);
    assertEquals(20 * PIXEL, up.length(), 1e-9);
    assertEquals(60 * PIXEL, up.middle(), 1e-9);
  }

  @Test
  void theBoxEndsWithinAGreyPixel() {
    Ink.Extent box = ink.extent(0, 0, 99 * PIXEL, 79 * PIXEL);
    assertEquals(20 * PIXEL, box.left(), 1e-9);
    assertEquals(40.5 * PIXEL, box.right(), 0.01);
    assertEquals(50 * PIXEL, box.bottom(), 1e-9);
    assertEquals(70 * PIXEL, box.top(), 1e-9);
    assertEquals(20.5 * PIXEL, box.width(), 0.01);
    assertEquals(20 * PIXEL, box.height(), 1e-9);
  }

  /** Netpbm's plain words: P5, width, height, the lightest grey, and a byte a dot. */
  @Test
  void aGreyMapIsReadAsWell() throws IOException {
    byte[] head = "P5\n100 80\n255\n".getBytes(StandardCharsets.US_ASCII);
    byte[] map = Arrays.copyOf(head, head.length + WIDTH * HEIGHT);
    Arrays.fill(map, head.length, map.length, (byte) 0xff);
    map[head.length + 10 * WIDTH + 20] = 0;
    Path file = folder.resolve("page.pgm");
    Files.write(file, map);
    Ink.Extent box = Ink.read(file, DOTS_PER_INCH).extent(0, 0, 99 * PIXEL, 79 * PIXEL);
    assertEquals(20 * PIXEL, box.left(), 1e-9);
    assertEquals(70 * PIXEL, box.top(), 1e-9);
    assertEquals(PIXEL, box.width(), 1e-9);
  }

  @Test
  void whereThereIsNoInkIsSaid() {
    assertThrows(IllegalArgumentException.class, () -> ink.extent(0, 0, 10, 10));
    assertEquals(0, ink.along(2, 0, 90).length());
  }
}
