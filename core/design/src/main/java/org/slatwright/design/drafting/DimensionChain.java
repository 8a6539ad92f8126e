package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;

/**
 * A chain of dimensions along one line beside a view: extension lines, oblique strokes where they
 * meet (ISO 129-1), and a number at each link.
 *
 * <p>Numbers read from the foot of the sheet, but for long ones in an upright chain, which read
 * from its right. A number that has no room at its link moves away from the view until it has.
 */
abstract sealed class DimensionChain permits AcrossChain, UpChain {

  /** Lettering of dimensions on paper, in mm (ISO 3098). */
  static final double LETTERING = 2.5;

  /** How far extension lines run on beyond the chain. */
  static final double OVERRUN = 1.5;

  /** Least distance between a number and whatever stands beside it. */
  static final double AIR = 0.5;

  /** Between a chain's line and a number that stands on it. */
  static final double OFF_LINE = 0.9;

  private static final double STROKE = 1.4;
  private static final double EXTENSION_GAP = 1;

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

    /**
     * From each place to the next.
     *
     * @param places rising, two at least
     * @param onPaper where each lies along the chain, in mm
     */
    static List<Link> between(
        Collection<Length> places, ToDoubleFunction<Length> onPaper, LengthFormat lengths) {
      List<Length> inOrder = List.copyOf(places);
      List<Link> links = new ArrayList<>();
      for (int i = 1; i < inOrder.size(); i++) {
        Length from = inOrder.get(i - 1);
        Length to = inOrder.get(i);
        Length value = to.minus(from);
        links.add(
            new Link(
                onPaper.applyAsDouble(from),
                onPaper.applyAsDouble(to),
                value,
                lengths.number(value)));
      }
      return links;
    }
  }

  private final List<Link> links;

  /** With links in order, each starting where the last one ended. */
  DimensionChain(List<Link> links) {
    this.links = List.copyOf(links);
  }

  final List<Link> links() {
    return links;
  }

  /** How far its numbers reach beyond its line, away from the view, in mm. */
  abstract double depth();

  /** In how many rows its numbers stand. */
  abstract int rows();

  /** Whether a number stands out beyond both ends, in the way of lines that run on from them. */
  abstract boolean isShort();

  /** How far a number stands out beyond the start of the first link, in mm. */
  double before() {
    return 0;
  }

  /** How far a number stands out beyond the end of the last link, in mm. */
  double after() {
    return 0;
  }

  /**
   * Drawn along a line.
   *
   * @param origin where the links count from, along the chain
   * @param line where the chain's line lies, across it
   * @param feature where the view ends that is measured; the chain faces away from it
   */
  abstract List<Figure> figures(double origin, double line, double feature);

  final DoubleStream ends() {
    return DoubleStream.concat(
        DoubleStream.of(links.get(0).from()), links.stream().mapToDouble(Link::to));
  }

  /** Where an extension line starts and ends, across the chain. */
  static double[] extension(double line, double feature) {
    double away = Math.signum(line - feature);
    return new double[] {feature + away * EXTENSION_GAP, line + away * OVERRUN};
  }

  /** Clear of the extension lines of the overall dimension, which run on from both ends. */
  static double inside(double middle, double half, List<Link> links) {
    double least = links.get(0).from() + AIR + half;
    double most = links.get(links.size() - 1).to() - AIR - half;
    return least > most ? middle : Math.min(Math.max(middle, least), most);
  }

  static Figure dimension(Link link, Figure... drawn) {
    return new Figure.Dimension(link.value(), link.text(), List.of(drawn));
  }

  static Figure stroke(double x, double y) {
    double half = STROKE / 2;
    return Strokes.line(x - half, y - half, x + half, y + half, LineKind.VISIBLE);
  }

  /** The stretches taken in each of a row of lanes, the nearest one first. */
  static final class Lanes {

    private record Stretch(double from, double to) {}

    private final List<List<Stretch>> lanes = new ArrayList<>();

    /** Takes that stretch in the nearest lane where it is free; gives the lane's number from 0. */
    int take(double from, double to) {
      int lane = 0;
      while (lane < lanes.size() && !isFree(lane, from, to)) {
        lane++;
      }
      if (lane == lanes.size()) {
        lanes.add(new ArrayList<>());
      }
      lanes.get(lane).add(new Stretch(from - AIR, to + AIR));
      return lane;
    }

    private boolean isFree(int lane, double from, double to) {
      return lanes.get(lane).stream().allMatch(taken -> to <= taken.from() || from >= taken.to());
    }
  }
}
