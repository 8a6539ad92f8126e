package org.slatwright.exporter.png;

import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;

/**
 * A picture as the JDK reads it.
 *
 * @param dots row by row from the top, 0 for black to 255 for white, whatever the file counts to
 */
record Greys(int width, int height, int[] dots) {

  static final int WHITE = 255;

  static Greys read(byte[] file) throws IOException {
    Raster raster = ImageIO.read(new ByteArrayInputStream(file)).getRaster();
    int[] dots = raster.getSamples(0, 0, raster.getWidth(), raster.getHeight(), 0, (int[]) null);
    int most = (1 << raster.getSampleModel().getSampleSize(0)) - 1;
    return new Greys(
        raster.getWidth(),
        raster.getHeight(),
        Arrays.stream(dots).map(dot -> dot * WHITE / most).toArray());
  }

  int at(int x, int y) {
    return dots[y * width + x];
  }

  /** Of a dot and its eight neighbours. */
  int darkestAbout(int x, int y) {
    int darkest = WHITE;
    for (int row = y - 1; row <= y + 1; row++) {
      for (int column = x - 1; column <= x + 1; column++) {
        darkest = Math.min(darkest, at(column, row));
      }
    }
    return darkest;
  }

  /** How dark the whole is, in black dots. */
  double ink() {
    return Arrays.stream(dots).map(dot -> WHITE - dot).sum() / (double) WHITE;
  }
}
