package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;

/**
 * A chain of dimensions along one line beside a view: extension lines, oblique strokes where they
 * meet (ISO 129-1), and each number above its link, or below where it is too wide for it.
 *
 * <p>A number reads from the foot of the sheet, or from its right side in an upright chain.
 */
final class DimensionChain {

  /** Lettering of dimensions on paper, in mm (ISO 3098). */
  static final double LETTERING = 2.5;

  private static final double STROKE = 1.4;
  private static final double EXTENSION_GAP = 1;
  private static final double EXTENSION_OVERRUN = 2;
  private static final double ABOVE_LINE = 0.9;
  private static final double AIR = 0.8;

  /**
   * One link.
   *
   * @param from where it starts along the chain, in mm on the paper
   * @param to where it ends; greater
   */
  record Link(double from, double to, Length value, String text) {

    double middle() {
      return (from + to) / 2;
    }

    double textWidth() {
      return Lettering.width(text, LETTERING);
    }

    boolean fits() {
      return textWidth() + AIR <= to - from;
    }
  }

  /** Which way a chain runs. */
  enum Run {
    ACROSS,
    UP;

    /** A place so far along the chain and so far to the left of its direction, from the origin. */
    PaperPoint at(double along, double above) {
      return this == ACROSS ? new PaperPoint(along, above) : new PaperPoint(-above, along);
    }

    double degrees() {
      return this == ACROSS ? 0 : 90;
    }
  }

  private final Run run;
  private final double line;
  private final double feature;

  private DimensionChain(Run run, double line, double feature) {
    this.run = run;
    this.line = line;
    this.feature = feature;
  }

  /**
   * A chain across at height {@code lineY}, for features that end at height {@code featureY}.
   *
   * @param links in order from the left, each starting where the last one ended
   */
  static List<Figure> across(double lineY, double featureY, List<Link> links) {
    return new DimensionChain(Run.ACROSS, lineY, featureY).figures(links);
  }

  /** A chain up at {@code lineX}, for features that end at {@code featureX}; links from below. */
  static List<Figure> up(double lineX, double featureX, List<Link> links) {
    return new DimensionChain(Run.UP, -lineX, -featureX).figures(links);
  }

  private List<Figure> figures(List<Link> links) {
    List<Figure> figures = new ArrayList<>();
    figures.add(extension(links.get(0).from()));
    double lastBelow = Double.NEGATIVE_INFINITY;
    for (Link link : links) {
      double middle = link.middle();
      if (!link.fits()) {
        middle = Math.max(middle, lastBelow + AIR + link.textWidth() / 2);
        lastBelow = middle + link.textWidth() / 2;
      }
      figures.add(dimension(link, middle));
      figures.add(extension(link.to()));
    }
    return figures;
  }

  private Figure dimension(Link link, double textMiddle) {
    double above = link.fits() ? ABOVE_LINE : -ABOVE_LINE - LETTERING;
    PaperPoint at = run.at(textMiddle, line + above);
    List<Figure> drawn =
        List.of(
            Figure.Polyline.line(run.at(link.from(), line), run.at(link.to(), line), LineKind.THIN),
            stroke(link.from()),
            stroke(link.to()),
            new Figure.Text(at, LETTERING, link.text(), Figure.Align.MIDDLE, run.degrees()));
    return new Figure.Dimension(link.value(), link.text(), drawn);
  }

  private Figure stroke(double along) {
    double half = STROKE / 2;
    return Figure.Polyline.line(
        run.at(along - half, line - half), run.at(along + half, line + half), LineKind.VISIBLE);
  }

  private Figure extension(double along) {
    double away = Math.signum(line - feature);
    return Figure.Polyline.line(
        run.at(along, feature + away * EXTENSION_GAP),
        run.at(along, line + away * EXTENSION_OVERRUN),
        LineKind.THIN);
  }
}
