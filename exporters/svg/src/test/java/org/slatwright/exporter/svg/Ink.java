package org.slatwright.exporter.svg;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.slatwright.testkit.OutsideTool;

/**
 * A sheet as rsvg-convert draws it, measured in millimetres from its lower left corner. Grey pixels
 * count in part, so that an edge is found more finely than the pixels lie.
 */
final class Ink {

  private static final int DOTS_PER_INCH = 600;
  private static final double MM = DOTS_PER_INCH / 25.4;

  private final BufferedImage image;

  private Ink(BufferedImage image) {
    this.image = image;
  }

  /** Draws it, or skips the test where rsvg-convert is missing. */
  static Ink of(byte[] svg) throws IOException, InterruptedException {
    OutsideTool rsvg = OutsideTool.thatRuns("rsvg-convert", "--version");
    Path folder = Files.createDirectories(Path.of("target", "ink"));
    Path file = Files.createTempFile(folder, "sheet", ".svg");
    Path picture = Files.createTempFile(folder, "sheet", ".png");
    try {
      Files.write(file, svg);
      String dots = Integer.toString(DOTS_PER_INCH);
      rsvg.run("-d", dots, "-p", dots, "-o", picture.toString(), file.toString());
      return new Ink(ImageIO.read(picture.toFile()));
    } finally {
      Files.delete(file);
      Files.delete(picture);
    }
  }

  double widthMm() {
    return image.getWidth() / MM;
  }

  double heightMm() {
    return image.getHeight() / MM;
  }

  /**
   * A stretch of ink.
   *
   * @param length how much of it there is
   * @param middle where it lies
   */
  record Stretch(double length, double middle) {}

  /** The ink from {@code fromX} to {@code toX} along one level line. */
  Stretch along(double y, double fromX, double toX) {
    double sum = 0;
    double moment = 0;
    for (int column = (int) (fromX * MM); column < toX * MM; column++) {
      double dark = dark(column, row(y));
      sum += dark;
      moment += dark * (column + 0.5);
    }
    return new Stretch(sum / MM, moment / sum / MM);
  }

  /** The ink from {@code fromY} up to {@code toY} along one upright line. */
  Stretch up(double x, double fromY, double toY) {
    double sum = 0;
    double moment = 0;
    for (int row = row(toY); row < row(fromY); row++) {
      double dark = dark((int) (x * MM), row);
      sum += dark;
      moment += dark * (image.getHeight() - row - 0.5);
    }
    return new Stretch(sum / MM, moment / sum / MM);
  }

  /** The box around the ink of one part of the sheet: left, bottom, right, top. */
  record Extent(double left, double bottom, double right, double top) {}

  /** The box around the ink between two corners. */
  Extent extent(double fromX, double fromY, double toX, double toY) {
    int left = Integer.MAX_VALUE;
    int right = 0;
    int highest = Integer.MAX_VALUE;
    int lowest = 0;
    for (int row = row(toY); row < row(fromY); row++) {
      for (int column = (int) (fromX * MM); column < toX * MM; column++) {
        if (dark(column, row) > 0.5) {
          left = Math.min(left, column);
          right = Math.max(right, column + 1);
          highest = Math.min(highest, row);
          lowest = Math.max(lowest, row + 1);
        }
      }
    }
    double height = image.getHeight();
    return new Extent(left / MM, (height - lowest) / MM, right / MM, (height - highest) / MM);
  }

  private int row(double y) {
    return (int) (image.getHeight() - y * MM);
  }

  private double dark(int column, int row) {
    return 1 - (image.getRGB(column, row) & 0xff) / 255.0;
  }
}
