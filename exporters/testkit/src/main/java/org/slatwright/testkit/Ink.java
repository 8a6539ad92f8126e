package org.slatwright.testkit;

import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/**
 * A page as some program drew it, measured in millimetres from its lower left corner. Grey pixels
 * count in part, so that an edge is found more finely than the pixels lie.
 */
public final class Ink {

  private static final double MM_PER_INCH = 25.4;

  /** What is lighter is a tint or the trace of a smoothed edge, not ink. */
  private static final double FAINT = 0.15;

  /** Netpbm's grey map: these letters, width, height and the lightest grey as text, then bytes. */
  private static final String GREY_MAP = "P5";

  private static final Pattern GREY_MAP_HEAD =
      Pattern.compile(GREY_MAP + "\\s+(\\d+)\\s+(\\d+)\\s+255\\s");

  private static final int LONGEST_HEAD = 64;

  private final Raster pixels;
  private final double white;
  private final double perMm;

  private Ink(Raster pixels, double perMm) {
    this.pixels = pixels;
    this.white = (1 << pixels.getSampleModel().getSampleSize(0)) - 1;
    this.perMm = perMm;
  }

  /**
   * A picture of a page on white, in greys of any number of bits or in colours of 8 bits each.
   *
   * @param picture a PNG file, or a PGM file without a comment, which is read many times as fast
   * @param dotsPerInch as it was drawn
   */
  public static Ink read(Path picture, int dotsPerInch) throws IOException {
    byte[] file = Files.readAllBytes(picture);
    boolean isGreyMap = new String(file, 0, 2, StandardCharsets.US_ASCII).equals(GREY_MAP);
    // The numbers as they stand in the file: what BufferedImage makes of greys is lighter.
    Raster pixels =
        isGreyMap ? greyMap(file) : ImageIO.read(new ByteArrayInputStream(file)).getRaster();
    return new Ink(pixels, dotsPerInch / MM_PER_INCH);
  }

  private static Raster greyMap(byte[] file) {
    Matcher head =
        GREY_MAP_HEAD.matcher(new String(file, 0, LONGEST_HEAD, StandardCharsets.US_ASCII));
    if (!head.lookingAt()) {
      throw new IllegalArgumentException("not a grey map of 256 greys");
    }
    int width = Integer.parseInt(head.group(1));
    int height = Integer.parseInt(head.group(2));
    DataBuffer greys = new DataBufferByte(file, width * height, head.end());
    return Raster.createInterleavedRaster(greys, width, height, width, 1, new int[] {0}, null);
  }

  /** Of the page. */
  public double widthMm() {
    return pixels.getWidth() / perMm;
  }

  /** Of the page. */
  public double heightMm() {
    return pixels.getHeight() / perMm;
  }

  /**
   * A stretch of ink.
   *
   * @param length how much of it there is, in mm
   * @param middle where it lies, in mm; not a number where there is none
   */
  public record Stretch(double length, double middle) {}

  /** The ink from {@code fromX} to {@code toX} along one level line, a pixel wide. */
  public Stretch along(double y, double fromX, double toX) {
    return stretch(column(fromX), column(toX), column -> dark(column, row(y)));
  }

  /** The ink from {@code fromY} up to {@code toY} along one upright line, a pixel wide. */
  public Stretch up(double x, double fromY, double toY) {
    Stretch down = stretch(row(toY), row(fromY), row -> dark(column(x), row));
    return new Stretch(down.length(), heightMm() - down.middle());
  }

  /** The box around the ink of one part of the page, in mm. */
  public record Extent(double left, double bottom, double right, double top) {

    /** To the right. */
    public double width() {
      return right - left;
    }

    /** Up. */
    public double height() {
      return top - bottom;
    }
  }

  /**
   * The box around the ink between two corners.
   *
   * @throws IllegalArgumentException when there is none
   */
  public Extent extent(double fromX, double fromY, double toX, double toY) {
    int[] columns = IntStream.range(column(fromX), column(toX)).toArray();
    int[] rows = IntStream.range(row(toY), row(fromY)).toArray();
    IntToDoubleFunction inColumn = column -> darkest(rows, row -> dark(column, row));
    IntToDoubleFunction inRow = row -> darkest(columns, column -> dark(column, row));
    return new Extent(
        first(columns, inColumn) / perMm,
        heightMm() - last(rows, inRow) / perMm,
        last(columns, inColumn) / perMm,
        heightMm() - first(rows, inRow) / perMm);
  }

  private Stretch stretch(int from, int to, IntToDoubleFunction darkness) {
    double sum = 0;
    double moment = 0;
    for (int pixel = from; pixel < to; pixel++) {
      double dark = darkness.applyAsDouble(pixel);
      if (dark > FAINT) {
        sum += dark;
        moment += dark * (pixel + 0.5);
      }
    }
    return new Stretch(sum / perMm, moment / sum / perMm);
  }

  /** Where ink begins: within a pixel, as far from its end as it is dark. */
  private static double first(int[] pixels, IntToDoubleFunction darkness) {
    for (int pixel : pixels) {
      double dark = darkness.applyAsDouble(pixel);
      if (dark > FAINT) {
        return pixel + 1 - dark;
      }
    }
    throw new IllegalArgumentException("there is no ink");
  }

  private static double last(int[] pixels, IntToDoubleFunction darkness) {
    for (int i = pixels.length - 1; i >= 0; i--) {
      double dark = darkness.applyAsDouble(pixels[i]);
      if (dark > FAINT) {
        return pixels[i] + dark;
      }
    }
    throw new IllegalArgumentException("there is no ink");
  }

  private static double darkest(int[] pixels, IntToDoubleFunction darkness) {
    double most = 0;
    for (int pixel : pixels) {
      most = Math.max(most, darkness.applyAsDouble(pixel));
    }
    return most;
  }

  private int column(double x) {
    return (int) (x * perMm);
  }

  private int row(double y) {
    return (int) (pixels.getHeight() - y * perMm);
  }

  private double dark(int column, int row) {
    return 1 - pixels.getSample(column, row, 0) / white;
  }
}
