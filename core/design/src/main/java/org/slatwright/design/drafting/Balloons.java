package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.sizing.Rack;

/**
 * The shop marks of upright, rail and slat in balloons on a side view, in its highest opening, each
 * with a leader to its part; none when the opening is too small on paper to hold them.
 */
final class Balloons {

  private static final double LEAST_RADIUS = 2.5;
  private static final double LETTERING = 2.5;
  private static final double AIR = 1;
  private static final double CLEAR = 0.3;
  private static final double ROOM_FOR_LEADERS = 4;

  private final RackView view;
  private final double radius;
  private final double middle;
  private final List<Figure> figures = new ArrayList<>();

  private Balloons(RackView view, double radius, double middle) {
    this.view = view;
    this.radius = radius;
    this.middle = middle;
  }

  static List<Figure> on(RackView side, Rack rack) {
    if (rack.openings().isEmpty()) {
      return List.of();
    }
    int opening = highest(rack);
    double radius = radius(side.assembly());
    Piece rail = side.assembly().pieces(Role.RAIL).get(opening);
    Piece railAbove = side.assembly().pieces(Role.RAIL).get(opening + 1);
    RackView.Cover above = side.cover(railAbove);
    double slats = rack.slats().thickness().inMm() * side.scale().factor();
    double low = side.cover(rail).top() + slats;
    double railX = above.left() + radius + AIR;
    double uprightX = above.right() - radius - 2 * AIR;
    Optional<Piece> slat = slatBetween(side, rail, 2 * radius + AIR, railX, uprightX);
    if (above.bottom() - low < 2 * radius + ROOM_FOR_LEADERS || slat.isEmpty()) {
      return List.of();
    }
    Balloons balloons = new Balloons(side, radius, (low + above.bottom()) / 2);
    balloons.up(railX, railAbove, above.middleY());
    balloons.down(middle(side, slat.get()), slat.get(), low - slats / 2);
    balloons.right(uprightX, side.assembly().pieces(Role.UPRIGHT).get(0), above.right());
    return List.copyOf(balloons.figures);
  }

  /** Of all of them: the widest mark has room in it. */
  private static double radius(Assembly assembly) {
    return assembly.parts().stream()
        .mapToDouble(part -> Lettering.width(part.mark(), LETTERING) / 2)
        .map(half -> Math.hypot(half, LETTERING / 2) + CLEAR)
        .reduce(LEAST_RADIUS, Math::max);
  }

  private static int highest(Rack rack) {
    return IntStream.range(0, rack.openings().size())
        .reduce((a, b) -> rack.openings().get(b).isMoreThan(rack.openings().get(a)) ? b : a)
        .orElseThrow();
  }

  /** The slat on a rail that is nearest the middle between two balloons and clear of both. */
  private static Optional<Piece> slatBetween(
      RackView view, Piece rail, double apart, double leftX, double rightX) {
    double centre = (leftX + rightX) / 2;
    return view.assembly().pieces(Role.SLAT).stream()
        .filter(slat -> slat.box().low().z().equals(rail.box().high().z()))
        .filter(slat -> slat.box().low().x().isLessThan(rail.box().high().x()))
        .filter(slat -> middle(view, slat) - leftX >= apart)
        .filter(slat -> rightX - middle(view, slat) >= apart)
        .min(Comparator.comparingDouble(slat -> Math.abs(middle(view, slat) - centre)));
  }

  private static double middle(RackView view, Piece piece) {
    return view.cover(piece).middleX();
  }

  private void up(double x, Piece piece, double end) {
    balloon(x, piece);
    figures.addAll(Leaders.dotted(x, middle + radius, x, end));
  }

  private void down(double x, Piece piece, double end) {
    balloon(x, piece);
    figures.addAll(Leaders.dotted(x, middle - radius, x, end));
  }

  private void right(double x, Piece upright, double railEnd) {
    balloon(x, upright);
    double half = upright.part().shape().thickness().inMm() * view.scale().factor() / 2;
    figures.addAll(Leaders.dotted(x + radius, middle, railEnd + half, middle));
  }

  private void balloon(double x, Piece piece) {
    figures.add(new Figure.Circle(new PaperPoint(x, middle), radius, LineKind.THIN));
    figures.add(
        Paragraph.text(
            x, middle - LETTERING / 2, LETTERING, piece.part().mark(), Figure.Align.MIDDLE));
  }
}
