package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;

/**
 * Running dimensions along one side of a view (ISO 129-1): every number counts from one end, the
 * datum, which is marked by a small circle. Each stands at its extension line, or as near to it as
 * the others let it be, with a leader.
 */
final class RunningDimensions {

  /** From the middle of one number to the middle of the next. */
  static final double PITCH = 4;

  private static final double FIRST = 7;
  private static final double LEADER = 5;
  private static final double GAP = 0.8;
  private static final double DATUM = 0.8;

  /**
   * A number.
   *
   * @param at its place along the view on paper, in mm from where the view starts
   * @param value from the datum
   */
  record Stop(double at, Length value, String text) {

    double textWidth() {
      return Lettering.width(text, DimensionChain.LETTERING);
    }
  }

  /** Where they stand beside the view. */
  enum Side {
    LEFT,
    RIGHT,
    ABOVE,
    BELOW;

    /** A place on the sheet. */
    PaperPoint point(double along, double feature, double away) {
      return switch (this) {
        case LEFT -> new PaperPoint(feature - away, along);
        case RIGHT -> new PaperPoint(feature + away, along);
        case ABOVE -> new PaperPoint(along, feature + away);
        case BELOW -> new PaperPoint(along, feature - away);
      };
    }

    Figure text(PaperPoint at, String text) {
      double half = DimensionChain.LETTERING / 2;
      boolean level = this == LEFT || this == RIGHT;
      return new Figure.Text(
          level ? at.moved(0, -half) : at.moved(half, 0),
          DimensionChain.LETTERING,
          text,
          this == LEFT || this == BELOW ? Figure.Align.END : Figure.Align.START,
          level ? 0 : 90);
    }
  }

  private final List<Stop> stops;
  private final double[] places;

  private RunningDimensions(List<Stop> stops) {
    this.stops = stops;
    double first = stops.get(0).at();
    double last = stops.get(stops.size() - 1).at();
    double over = Math.max(0, Spread.height(stops.size(), PITCH) - (last - first)) / 2;
    this.places =
        Spread.places(
            stops.stream().mapToDouble(Stop::at).toArray(), PITCH, first - over, last + over);
  }

  /**
   * To those places that are shown.
   *
   * @param values from the datum, at least one of them shown
   */
  static RunningDimensions of(
      Iterable<Length> values, Shown shown, Scale scale, LengthFormat lengths) {
    TreeMap<Length, Stop> stops = new TreeMap<>();
    for (Length value : values) {
      if (shown.shows(value.nanometres())) {
        double at = shown.place(value.nanometres(), scale.factor());
        stops.put(value, new Stop(at, value, lengths.number(value)));
      }
    }
    return new RunningDimensions(List.copyOf(stops.values()));
  }

  /** How far they reach from the view, in mm. */
  double depth() {
    return FIRST + LEADER + GAP + stops.stream().mapToDouble(Stop::textWidth).max().orElseThrow();
  }

  /** How far they reach beyond the start of the view, in mm. */
  double before() {
    return Math.max(0, PITCH / 2 - places[0]);
  }

  /** How far they reach beyond the end of a view of that size, in mm. */
  double after(double size) {
    return Math.max(0, places[places.length - 1] + PITCH / 2 - size);
  }

  /** Whether they have room between the first place and the last. */
  boolean isRoomy() {
    return Spread.height(stops.size(), PITCH) <= last().at() - stops.get(0).at();
  }

  private Stop last() {
    return stops.get(stops.size() - 1);
  }

  /**
   * Drawn beside a view.
   *
   * @param origin where the view starts, along them
   * @param feature where it ends, across them
   */
  List<Figure> figures(Side side, double origin, double feature) {
    List<Figure> figures = new ArrayList<>();
    boolean fromDatum = stops.get(0).value().isZero();
    double start = origin + (fromDatum ? stops.get(0).at() : 0);
    if (fromDatum) {
      figures.add(new Figure.Circle(side.point(start, feature, FIRST), DATUM, LineKind.THIN));
    }
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      double end = origin + stop.at();
      figures.add(dimension(stop, start, end, origin + places[i], side, feature));
      start = end;
    }
    return figures;
  }

  private static Figure dimension(
      Stop stop, double from, double at, double label, Side side, double feature) {
    List<Figure> drawn = new ArrayList<>();
    PaperPoint line = side.point(at, feature, FIRST);
    double[] extension = DimensionChain.extension(FIRST, 0);
    if (at > from) {
      drawn.add(Figure.Polyline.line(side.point(from, feature, FIRST), line, LineKind.THIN));
    }
    if (!stop.value().isZero()) {
      drawn.add(DimensionChain.stroke(line.x(), line.y()));
    }
    drawn.add(
        new Figure.Polyline(
            List.of(
                side.point(at, feature, extension[0]),
                side.point(at, feature, extension[1]),
                side.point(label, feature, FIRST + LEADER)),
            false,
            LineKind.THIN));
    drawn.add(side.text(side.point(label, feature, FIRST + LEADER + GAP), stop.text()));
    return new Figure.Dimension(stop.value(), stop.text(), drawn);
  }
}
