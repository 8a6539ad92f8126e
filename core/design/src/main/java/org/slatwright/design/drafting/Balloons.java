package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.sizing.Rack;

/**
 * The shop marks of upright, rail and slat in balloons on a side view, in its highest opening, each
 * with a leader to its part; none when the opening is too small on paper to hold them.
 */
final class Balloons {

  private static final double RADIUS = 2.5;
  private static final double LETTERING = 2.5;
  private static final double LEAST_HEIGHT = 2 * RADIUS + 4;
  private static final double LEAST_WIDTH = 6 * RADIUS + 4;

  private final RackView view;
  private final double middle;
  private final List<Figure> figures = new ArrayList<>();

  private Balloons(RackView view, double middle) {
    this.view = view;
    this.middle = middle;
  }

  static List<Figure> on(RackView side, Rack rack) {
    if (rack.openings().isEmpty()) {
      return List.of();
    }
    int opening =
        IntStream.range(0, rack.openings().size())
            .reduce((a, b) -> rack.openings().get(b).isMoreThan(rack.openings().get(a)) ? b : a)
            .orElseThrow();
    List<Piece> rails = side.assembly().pieces(Role.RAIL);
    Piece above = rails.get(opening + 1);
    double[] railAbove = side.cover(above);
    double[] railBelow = side.cover(rails.get(opening));
    double low = railBelow[3] + rack.slats().thickness().inMm() * side.scale().factor();
    double high = railAbove[1];
    if (high - low < LEAST_HEIGHT || railAbove[2] - railAbove[0] < LEAST_WIDTH) {
      return List.of();
    }
    Balloons balloons = new Balloons(side, (low + high) / 2);
    balloons.mark(above, railAbove);
    balloons.markSlat(rails.get(opening), low);
    balloons.markUpright(railAbove[2]);
    return List.copyOf(balloons.figures);
  }

  private void mark(Piece rail, double[] cover) {
    double x = cover[0] + RADIUS + 1.5;
    balloon(x, rail.part().mark());
    figures.addAll(Leaders.dotted(x, middle + RADIUS, x, (cover[1] + cover[3]) / 2));
  }

  private void markSlat(Piece rail, double top) {
    List<Piece> lying =
        view.assembly().pieces(Role.SLAT).stream()
            .filter(slat -> slat.box().low().z().equals(rail.box().high().z()))
            .filter(slat -> slat.box().low().x().isLessThan(rail.box().high().x()))
            .toList();
    Piece slat = lying.get((lying.size() - 1) / 2);
    double[] cover = view.cover(slat);
    double x = (cover[0] + cover[2]) / 2;
    balloon(x, slat.part().mark());
    figures.addAll(Leaders.dotted(x, middle - RADIUS, x, (cover[1] + top) / 2));
  }

  private void markUpright(double railEnd) {
    Piece upright = view.assembly().pieces(Role.UPRIGHT).get(0);
    double x = railEnd - RADIUS - 2;
    balloon(x, upright.part().mark());
    double half = upright.part().shape().thickness().inMm() * view.scale().factor() / 2;
    figures.addAll(Leaders.dotted(x + RADIUS, middle, railEnd + half, middle));
  }

  private void balloon(double x, String mark) {
    figures.add(new Figure.Circle(new PaperPoint(x, middle), RADIUS, LineKind.THIN));
    figures.add(Paragraph.text(x, middle - LETTERING / 2, LETTERING, mark, Figure.Align.MIDDLE));
  }
}
