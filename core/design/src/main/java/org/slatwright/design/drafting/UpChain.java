package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/**
 * A chain to the left or right of a view. Numbers stand level beyond the ends of the extension
 * lines, each at the height of its link; where links are lower than lettering, in several columns.
 */
final class UpChain extends DimensionChain {

  private static final double LONGEST_LEVEL = 11;
  private static final double BETWEEN_COLUMNS = 1;

  /** How much higher and lower than its digits the stroke of a fraction reaches, together. */
  private static final double STROKE_OF_FRACTION = 1.3;

  private record Spot(double middle, int column, boolean level) {}

  private final List<Spot> spots;
  private final List<Double> columnWidths;

  UpChain(List<Link> links) {
    super(links);
    this.spots = spots(links);
    this.columnWidths = columnWidths(links, spots);
  }

  @Override
  double depth() {
    return offset(columnWidths.size()) - BETWEEN_COLUMNS;
  }

  @Override
  int rows() {
    return columnWidths.size();
  }

  @Override
  boolean isShort() {
    double total = links().get(links().size() - 1).to() - links().get(0).from();
    return LETTERING + STROKE_OF_FRACTION + 2 * AIR > total;
  }

  private static List<Spot> spots(List<Link> links) {
    Lanes columns = new Lanes();
    return links.stream().map(link -> spot(link, links, columns)).toList();
  }

  private static Spot spot(Link link, List<Link> links, Lanes columns) {
    boolean level = link.textWidth() <= LONGEST_LEVEL || link.textWidth() + 2 * AIR > link.size();
    double half = (level ? LETTERING + STROKE_OF_FRACTION : link.textWidth()) / 2;
    double middle = inside(link.middle(), half, links);
    return new Spot(middle, columns.take(middle - half, middle + half), level);
  }

  private static List<Double> columnWidths(List<Link> links, List<Spot> spots) {
    List<Double> widths = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      while (widths.size() <= spot.column()) {
        widths.add(0.0);
      }
      double width = spot.level() ? links.get(i).textWidth() : LETTERING;
      widths.set(spot.column(), Math.max(widths.get(spot.column()), width));
    }
    return List.copyOf(widths);
  }

  /** From the chain's line to the near side of a column. */
  private double offset(int column) {
    return OVERRUN
        + AIR
        + columnWidths.subList(0, column).stream().mapToDouble(w -> w + BETWEEN_COLUMNS).sum();
  }

  @Override
  List<Figure> figures(double origin, double line, double feature) {
    double away = Math.signum(line - feature);
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < links().size(); i++) {
      Link link = links().get(i);
      double from = origin + link.from();
      double to = origin + link.to();
      figures.add(
          dimension(
              link,
              Strokes.line(line, from, line, to, LineKind.THIN),
              stroke(line, from),
              stroke(line, to),
              text(link, spots.get(i), origin, line, away)));
    }
    double[] extension = extension(line, feature);
    ends()
        .map(y -> origin + y)
        .forEach(y -> figures.add(Strokes.line(extension[0], y, extension[1], y, LineKind.THIN)));
    return figures;
  }

  private Figure text(Link link, Spot spot, double origin, double line, double away) {
    double x = line + away * offset(spot.column());
    double y = origin + spot.middle();
    if (spot.level()) {
      Figure.Align align = away < 0 ? Figure.Align.END : Figure.Align.START;
      return new Figure.Text(
          new PaperPoint(x, y - LETTERING / 2), LETTERING, link.text(), align, 0);
    }
    double foot = away < 0 ? x : x + LETTERING;
    return new Figure.Text(
        new PaperPoint(foot, y), LETTERING, link.text(), Figure.Align.MIDDLE, 90);
  }
}
