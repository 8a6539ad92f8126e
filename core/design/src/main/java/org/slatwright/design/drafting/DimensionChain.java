package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;

/**
 * A chain of dimensions along one line beside a view: extension lines, oblique strokes where they
 * meet (ISO 129-1), and a number at each link. All numbers read from the foot of the sheet, but for
 * long ones in an upright chain, which read from its right.
 *
 * <p>A number that is too wide for its link stands outside the chain when it is the first or last,
 * and else on the side away from the view, past the ends of the extension lines.
 */
final class DimensionChain {

  /** Lettering of dimensions on paper, in mm (ISO 3098). */
  static final double LETTERING = 2.5;

  private static final double STROKE = 1.4;
  private static final double EXTENSION_GAP = 1;
  private static final double EXTENSION_OVERRUN = 1.5;
  private static final double OFF_LINE = 0.9;
  private static final double AIR = 0.5;
  private static final double LONGEST_LEVEL = 11;
  private static final double LEAST_CLOSE = 6;

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

    double size() {
      return to - from;
    }

    double textWidth() {
      return Lettering.width(text, LETTERING);
    }
  }

  private DimensionChain() {}

  /**
   * A chain across at height {@code y}, for features that end at height {@code featureY} above or
   * below it.
   *
   * @param links in order from the left, each starting where the last one ended
   */
  static List<Figure> across(double y, double featureY, List<Link> links) {
    double away = Math.signum(y - featureY);
    double secondRow =
        away < 0 ? y - EXTENSION_OVERRUN - AIR - LETTERING : y + OFF_LINE + LETTERING + AIR;
    List<Figure> figures = new ArrayList<>();
    double lastOutside = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < links.size(); i++) {
      Link link = links.get(i);
      double half = link.textWidth() / 2;
      double middle = link.middle();
      double baseline = y + OFF_LINE;
      double lineFrom = link.from();
      double lineTo = link.to();
      if (link.textWidth() + 2 * AIR > link.size()) {
        if (i == 0 && links.size() > 1) {
          middle = link.from() - STROKE - half;
          lineFrom = middle - half;
        } else if (i == links.size() - 1) {
          middle = link.to() + STROKE + half;
          lineTo = middle + half;
        } else {
          middle = Math.max(middle, lastOutside + 2 * AIR + half);
          lastOutside = middle + half;
          baseline = secondRow;
        }
      }
      figures.add(
          dimension(
              link,
              line(lineFrom, y, lineTo, y, LineKind.THIN),
              stroke(link.from(), y),
              stroke(link.to(), y),
              text(middle, baseline, link, Figure.Align.MIDDLE, 0)));
    }
    ends(links)
        .forEach(
            x ->
                figures.add(
                    line(
                        x,
                        featureY + away * EXTENSION_GAP,
                        x,
                        y + away * EXTENSION_OVERRUN,
                        LineKind.THIN)));
    return figures;
  }

  /**
   * A chain up at {@code x}, for features that end at {@code featureX} to the right or left of it.
   *
   * @param links in order from below, each starting where the last one ended
   */
  static List<Figure> up(double x, double featureX, List<Link> links) {
    double away = Math.signum(x - featureX);
    Figure.Align align = away < 0 ? Figure.Align.END : Figure.Align.START;
    List<Figure> figures = new ArrayList<>();
    double lastOutside = Double.NEGATIVE_INFINITY;
    for (Link link : links) {
      Figure text;
      double baseline = link.middle() - LETTERING / 2;
      if (link.textWidth() > LONGEST_LEVEL && link.textWidth() + 2 * AIR <= link.size()) {
        double foot = away < 0 ? x - OFF_LINE : x + OFF_LINE + LETTERING;
        text = text(foot, link.middle(), link, Figure.Align.MIDDLE, 90);
      } else if (LEAST_CLOSE <= link.size()) {
        text = text(x + away * OFF_LINE, baseline, link, align, 0);
      } else {
        baseline = Math.max(baseline, lastOutside + 2 * AIR);
        lastOutside = baseline + LETTERING;
        text = text(x + away * (EXTENSION_OVERRUN + AIR), baseline, link, align, 0);
      }
      figures.add(
          dimension(
              link,
              line(x, link.from(), x, link.to(), LineKind.THIN),
              stroke(x, link.from()),
              stroke(x, link.to()),
              text));
    }
    ends(links)
        .forEach(
            y ->
                figures.add(
                    line(
                        featureX + away * EXTENSION_GAP,
                        y,
                        x + away * EXTENSION_OVERRUN,
                        y,
                        LineKind.THIN)));
    return figures;
  }

  private static DoubleStream ends(List<Link> links) {
    return DoubleStream.concat(
        DoubleStream.of(links.get(0).from()), links.stream().mapToDouble(Link::to));
  }

  private static Figure dimension(Link link, Figure... drawn) {
    return new Figure.Dimension(link.value(), link.text(), List.of(drawn));
  }

  private static Figure text(double x, double y, Link link, Figure.Align align, double degrees) {
    return new Figure.Text(new PaperPoint(x, y), LETTERING, link.text(), align, degrees);
  }

  private static Figure stroke(double x, double y) {
    double half = STROKE / 2;
    return line(x - half, y - half, x + half, y + half, LineKind.VISIBLE);
  }

  private static Figure line(double x1, double y1, double x2, double y2, LineKind kind) {
    return Figure.Polyline.line(new PaperPoint(x1, y1), new PaperPoint(x2, y2), kind);
  }
}
