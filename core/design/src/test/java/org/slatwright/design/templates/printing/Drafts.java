package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;

/** Drafts made by hand, for the staging of a cut-flower stand. */
final class Drafts {

  private static final double HOLE = 5;
  private static final double AROUND = 8;

  private Drafts() {}

  /** An upright with a hole every 190 mm, each with its centre lines and its name. */
  static Draft strip(String name, long widthMm, long heightMm) {
    List<Figure> figures = new ArrayList<>();
    List<Draft.Disc> discs = new ArrayList<>();
    figures.add(box(0, 0, widthMm, heightMm));
    figures.add(line(widthMm / 2.0, 0, widthMm / 2.0, heightMm, LineKind.CENTRE));
    for (int y = 60; y < heightMm - 10; y += 190) {
      PaperPoint centre = new PaperPoint(widthMm / 2.0, y);
      discs.add(new Draft.Disc(centre, AROUND));
      figures.add(hole(name + "-" + y, centre));
      figures.add(
          new Figure.Text(new PaperPoint(widthMm / 2.0 + 7, y + 4), 2.5, "d " + y, Align.START, 0));
    }
    return new Draft(
        "templates/" + name,
        "where the holes of the upright go",
        List.of(
            "Lay it on the face side, its lower end flush with the foot.",
            "Prick the centre of every hole through the paper, then drill."),
        Length.mm(widthMm),
        Length.mm(heightMm),
        figures,
        discs);
  }

  /** A plate with round corners, a large bore that no page holds whole, and a shaded band. */
  static Draft plate(String name, long widthMm, long heightMm) {
    double radius = Math.min(widthMm, heightMm) * 0.4;
    double corner = 12;
    PaperPoint middle = new PaperPoint(widthMm / 2.0, heightMm / 2.0);
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure.Fill(
            List.of(at(0, 0), at(widthMm, heightMm * 0.3), at(widthMm * 0.5, heightMm * 0.2)),
            Figure.Shade.TINT));
    figures.add(line(corner, 0, widthMm - corner, 0, LineKind.VISIBLE));
    figures.add(line(corner, heightMm, widthMm - corner, heightMm, LineKind.VISIBLE));
    figures.add(line(0, corner, 0, heightMm - corner, LineKind.VISIBLE));
    figures.add(line(widthMm, corner, widthMm, heightMm - corner, LineKind.VISIBLE));
    figures.add(arc(corner, corner, corner, 180));
    figures.add(arc(widthMm - corner, corner, corner, 270));
    figures.add(arc(widthMm - corner, heightMm - corner, corner, 0));
    figures.add(arc(corner, heightMm - corner, corner, 90));
    figures.add(new Figure.Circle(middle, radius, LineKind.VISIBLE));
    figures.add(new Figure.Arc(middle, radius * 0.9, 30, -300, LineKind.THIN));
    figures.add(
        new Figure.Dimension(
            Length.mm(widthMm),
            widthMm + "",
            List.of(
                line(0, heightMm / 2.0, widthMm, heightMm / 2.0, LineKind.THIN),
                new Figure.Text(middle.moved(3, 1), 3.5, widthMm + "", Align.START, 0))));
    return new Draft(
        "templates/" + name,
        "the plate",
        List.of(),
        Length.mm(widthMm),
        Length.mm(heightMm),
        figures,
        List.of(new Draft.Disc(middle, AROUND)));
  }

  private static Figure hole(String id, PaperPoint centre) {
    double reach = HOLE + 2;
    return new Figure.Cluster(
        id,
        "hole " + id,
        List.of(
            new Figure.Circle(centre, HOLE, LineKind.VISIBLE),
            line(centre.x() - reach, centre.y(), centre.x() + reach, centre.y(), LineKind.THIN),
            line(centre.x(), centre.y() - reach, centre.x(), centre.y() + reach, LineKind.THIN)));
  }

  private static Figure box(double left, double bottom, double right, double top) {
    return new Figure.Polyline(
        List.of(at(left, bottom), at(right, bottom), at(right, top), at(left, top)),
        true,
        LineKind.VISIBLE);
  }

  private static Figure arc(double x, double y, double radius, double start) {
    return new Figure.Arc(at(x, y), radius, start, 90, LineKind.VISIBLE);
  }

  private static Figure line(double x1, double y1, double x2, double y2, LineKind kind) {
    return Figure.Polyline.line(at(x1, y1), at(x2, y2), kind);
  }

  private static PaperPoint at(double x, double y) {
    return new PaperPoint(x, y);
  }
}
