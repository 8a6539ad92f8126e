package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/**
 * A chain above or below a view. A number that is too wide for its link stands beside the chain
 * when it is the first or last, and else in a row beyond the ends of the extension lines.
 */
final class AcrossChain extends DimensionChain {

  private static final double ROW = LETTERING * 1.4;
  private static final double BESIDE = 1.4;
  private static final double CLEAR_OF_STROKE = 0.9;

  /**
   * Where a number stands.
   *
   * @param row 0 on the line, 1 beyond it, …
   */
  private record Spot(double middle, int row) {}

  private final List<Spot> spots;
  private final int rows;

  AcrossChain(List<Link> links) {
    super(links);
    this.spots = spots(links);
    this.rows = spots.stream().mapToInt(Spot::row).max().orElse(0);
  }

  @Override
  double depth() {
    return OVERRUN + AIR + rows * ROW;
  }

  @Override
  int rows() {
    return rows + 1;
  }

  @Override
  double before() {
    double start = links().get(0).from();
    return IntStream.range(0, spots.size())
        .mapToDouble(i -> start - spots.get(i).middle() + links().get(i).textWidth() / 2)
        .reduce(0, Math::max);
  }

  @Override
  double after() {
    double end = links().get(links().size() - 1).to();
    return IntStream.range(0, spots.size())
        .mapToDouble(i -> spots.get(i).middle() + links().get(i).textWidth() / 2 - end)
        .reduce(0, Math::max);
  }

  @Override
  boolean isShort() {
    double total = links().get(links().size() - 1).to() - links().get(0).from();
    return IntStream.range(0, spots.size())
        .filter(i -> spots.get(i).row() > 0)
        .anyMatch(i -> links().get(i).textWidth() + 2 * AIR > total);
  }

  private static List<Spot> spots(List<Link> links) {
    Lanes beyond = new Lanes();
    List<Spot> spots = new ArrayList<>();
    int last = links.size() - 1;
    for (int i = 0; i <= last; i++) {
      Link link = links.get(i);
      double half = link.textWidth() / 2;
      if (link.textWidth() + 2 * CLEAR_OF_STROKE <= link.size()) {
        spots.add(new Spot(link.middle(), 0));
      } else if (i == 0 && last > 0) {
        spots.add(new Spot(link.from() - BESIDE - half, 0));
      } else if (i == last) {
        spots.add(new Spot(link.to() + BESIDE + half, 0));
      } else {
        double middle = inside(link.middle(), half, links);
        spots.add(new Spot(middle, 1 + beyond.take(middle - half, middle + half)));
      }
    }
    return spots;
  }

  @Override
  List<Figure> figures(double origin, double line, double feature) {
    boolean below = line < feature;
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < links().size(); i++) {
      Link link = links().get(i);
      Spot spot = spots.get(i);
      double from = origin + link.from();
      double to = origin + link.to();
      double middle = origin + spot.middle();
      double half = link.textWidth() / 2;
      boolean beside = spot.row() == 0;
      double lineFrom = beside ? Math.min(from, middle - half) : from;
      double lineTo = beside ? Math.max(to, middle + half) : to;
      PaperPoint at = new PaperPoint(middle, baseline(spot.row(), line, below));
      figures.add(
          dimension(
              link,
              Strokes.line(lineFrom, line, lineTo, line, LineKind.THIN),
              stroke(from, line),
              stroke(to, line),
              new Figure.Text(at, LETTERING, link.text(), Figure.Align.MIDDLE, 0)));
    }
    double[] extension = extension(line, feature);
    ends()
        .map(x -> origin + x)
        .forEach(x -> figures.add(Strokes.line(x, extension[0], x, extension[1], LineKind.THIN)));
    return figures;
  }

  private static double baseline(int row, double line, boolean below) {
    if (row == 0 || !below) {
      return line + OFF_LINE + row * ROW;
    }
    return line - OVERRUN - AIR - LETTERING - (row - 1) * ROW;
  }
}
