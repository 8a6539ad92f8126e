package org.slatwright.exporter.figures;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure.Shade;
import org.slatwright.api.drawing.LineKind;

/**
 * The looks of a drawing: its classes, and the style sheet that gives them ink.
 *
 * @param ink the colour of lines and lettering, as CSS spells it
 * @param tint of a shaded face
 * @param paper of what covers
 */
public record SvgStyle(String ink, String tint, String paper) {

  /** As it is printed. */
  public static final SvgStyle BLACK_ON_WHITE = new SvgStyle("#000", "#e4e4e4", "#fff");

  /** The class of lines of a kind. The prefix keeps it apart from those of a web page around it. */
  static String lineClass(LineKind line) {
    return "line-" + line.name().toLowerCase(Locale.ROOT);
  }

  /** The class of filled polygons. */
  static String fillClass(Shade shade) {
    return "fill-" + shade.name().toLowerCase(Locale.ROOT);
  }

  /** One rule for every class of lines and fills. */
  public String figures() {
    String lines = Arrays.stream(LineKind.values()).map(this::line).collect(Collectors.joining());
    return lines + Arrays.stream(Shade.values()).map(this::fill).collect(Collectors.joining());
  }

  /**
   * The rule for lettering. Without kerning and ligatures, since its width was reckoned so.
   *
   * @param families quoted and joined by commas
   */
  String lettering(String families) {
    return ".lettering{fill:"
        + ink
        + ";font-family:"
        + families
        + ",sans-serif;font-kerning:none;font-variant-ligatures:none}\n";
  }

  private String line(LineKind line) {
    List<String> dashes = line.dashesMm().stream().map(SvgStyle::plain).toList();
    String dashed = dashes.isEmpty() ? "" : ";stroke-dasharray:" + String.join(" ", dashes);
    return "."
        + lineClass(line)
        + "{fill:none;stroke:"
        + ink
        + ";stroke-width:"
        + plain(line.widthMm())
        + dashed
        + (line.isRound() ? ";stroke-linecap:round;stroke-linejoin:round" : "")
        + "}\n";
  }

  private String fill(Shade shade) {
    String colour =
        switch (shade) {
          case INK -> ink;
          case TINT -> tint;
          case PAPER -> paper;
        };
    return "." + fillClass(shade) + "{fill:" + colour + "}\n";
  }

  private static String plain(double value) {
    return Double.toString(value).replaceAll("\\.0$", "");
  }
}
