package org.slatwright.exporter.svg;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure.Shade;
import org.slatwright.api.drawing.LineKind;

/** The looks of a sheet: its classes, and the style sheet that gives them ink. */
final class SvgStyle {

  private static final String INK = "#000";

  private SvgStyle() {}

  /** The class of lines of a kind. The prefix keeps it apart from those of a web page around it. */
  static String lineClass(LineKind line) {
    return "line-" + line.name().toLowerCase(Locale.ROOT);
  }

  /** The class of filled polygons. */
  static String fillClass(Shade shade) {
    return "fill-" + shade.name().toLowerCase(Locale.ROOT);
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
