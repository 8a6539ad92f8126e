package org.slatwright.api.drawing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * The lettering of every sheet: IBM Plex Sans Condensed Regular, under the SIL Open Font License
 * 1.1, which comes with this package. Text is laid out by its widths, so an exporter that wants
 * everything to fit embeds it, or draws its glyphs.
 */
public final class Lettering {

  /** The name of the font family. */
  public static final String FAMILY = "IBM Plex Sans Condensed";

  /** Height of a capital letter, as a part of the font size (the font's OS/2 table: 698/1000). */
  public static final double CAP_HEIGHT = 0.698;

  private static final String FONT = "IBMPlexSansCondensed-Regular.ttf";
  private static final String WIDTHS = "IBMPlexSansCondensed-Regular.widths";
  private static final double UNITS_PER_EM = 1000;
  private static final int UNKNOWN_WIDTH = 1000;
  private static final Map<Integer, Integer> WIDTH_BY_CODE_POINT = readWidths();

  private Lettering() {}

  /** The font size, in mm, at which capitals are {@code height} mm high. */
  public static double fontSize(double height) {
    return height / CAP_HEIGHT;
  }

  /**
   * How far {@code text} runs, in mm, when its capitals are {@code height} mm high; without
   * kerning. A character that the font lacks counts as wide as the font is high.
   */
  public static double width(String text, double height) {
    int units = 0;
    for (int i = 0; i < text.length(); ) {
      int codePoint = text.codePointAt(i);
      units += WIDTH_BY_CODE_POINT.getOrDefault(codePoint, UNKNOWN_WIDTH);
      i += Character.charCount(codePoint);
    }
    return units / UNITS_PER_EM * fontSize(height);
  }

  /** Whether the font has a glyph for {@code codePoint}. */
  public static boolean has(int codePoint) {
    return WIDTH_BY_CODE_POINT.containsKey(codePoint);
  }

  /** The TrueType font file; the caller closes it. */
  public static InputStream openFont() {
    return open(FONT);
  }

  private static InputStream open(String resource) {
    InputStream stream = Lettering.class.getResourceAsStream(resource);
    if (stream == null) {
      throw new IllegalStateException("the api jar lacks " + resource);
    }
    return stream;
  }

  private static Map<Integer, Integer> readWidths() {
    Map<Integer, Integer> widths = new HashMap<>();
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(open(WIDTHS), StandardCharsets.US_ASCII))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        int space = line.indexOf(' ');
        widths.put(
            Integer.parseInt(line.substring(0, space), 16),
            Integer.parseInt(line.substring(space + 1)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Map.copyOf(widths);
  }
}
