package org.slatwright.exporter.svg;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure.Shade;
import org.slatwright.api.drawing.LineKind;

/** The looks of a sheet: its classes, and the style sheet that gives them ink. */
final class SvgStyle {

  private static final String INK = "#000";

  /** Wide lines: edges drawn one by one meet in a whole corner. Others end where they end. */
  private static final Set<LineKind> OUTLINES = EnumSet.of(LineKind.VISIBLE, LineKind.BORDER);

  private SvgStyle() {}

  /** The class of lines of a kind. The prefix keeps it apart from those of a web page around it. */
  static String lineClass(LineKind line) {
    return "line-" + line.name().toLowerCase(Locale.ROOT);
  }

  /** The class of filled polygons. */
  static String fillClass(Shade shade) {
    return "fill-" + shade.name().toLowerCase(Locale.ROOT);
  }

  /**
   * The rule for print. Without it a browser fits the drawing to a page with margins, and it is no
   * longer true to size.
   */
  static String page(String width, String height) {
    return "@page{size:" + width + "mm " + height + "mm;margin:0}\n";
  }

  /** One rule for every class of lines and fills. */
  static String figures() {
    String lines =
        Arrays.stream(LineKind.values()).map(SvgStyle::line).collect(Collectors.joining());
    return lines + Arrays.stream(Shade.values()).map(SvgStyle::fill).collect(Collectors.joining());
  }

  /**
   * The rule for lettering. Without kerning and ligatures, since its width was reckoned so.
   *
   * @param families quoted and joined by commas
   */
  static String lettering(String families) {
    return ".lettering{fill:"
        + INK
        + ";font-family:"
        + families
        + ",sans-serif;font-kerning:none;font-variant-ligatures:none}\n";
  }

  private static String line(LineKind line) {
    List<String> dashes = line.dashesMm().stream().map(SvgStyle::plain).toList();
    String dashed = dashes.isEmpty() ? "" : ";stroke-dasharray:" + String.join(" ", dashes);
    return "."
        + lineClass(line)
        + "{fill:none;stroke:"
        + INK
        + ";stroke-width:"
        + plain(line.widthMm())
        + dashed
        + (OUTLINES.contains(line) ? ";stroke-linecap:round;stroke-linejoin:round" : "")
        + "}\n";
  }

  private static String fill(Shade shade) {
    String colour =
        switch (shade) {
          case INK -> INK;
          case TINT -> "#e4e4e4";
          case PAPER -> "#fff";
        };
    return "." + fillClass(shade) + "{fill:" + colour + "}\n";
  }

  private static String plain(double value) {
    return Double.toString(value).replaceAll("\\.0$", "");
  }
}
