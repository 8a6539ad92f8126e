package org.slatwright.exporter.svg;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;

/** A sheet made by hand, with every figure that there is and every kind of line. */
final class FigureSheet {

  private FigureSheet() {}

  static Sheet sheet() {
    return new Sheet(
        "drawings/01-bench",
        "Potting bench & trays",
        Paper.A4,
        true,
        List.of(
            new View("lines", "Kinds of line", Optional.empty(), lines()),
            new View("front", "Front view", Optional.of(new Scale(1, 10)), front()),
            new View("lettering", "Lettering", Optional.empty(), lettering())));
  }

  /** The figures alone, on landscape A4. */
  static Sheet of(Figure... figures) {
    return new Sheet(
        "drawings/01-plain",
        "Plain",
        Paper.A4,
        true,
        List.of(new View("view", "View", Optional.empty(), List.of(figures))));
  }

  private static List<Figure> lines() {
    LineKind[] kinds = LineKind.values();
    return IntStream.range(0, kinds.length)
        .<Figure>mapToObj(i -> line(20, 190 - 5 * i, 120, 190 - 5 * i, kinds[i]))
        .toList();
  }

  private static List<Figure> front() {
    Figure edge =
        new Figure.Polyline(
            List.of(at(20, 30), at(80, 30), at(80, 110), at(20, 110)), true, LineKind.VISIBLE);
    Figure brace =
        new Figure.Polyline(
            List.of(at(20, 70), at(50, 110.1234), at(80, 70)), false, LineKind.HIDDEN);
    return List.of(
        new Figure.Fill(
            List.of(at(20, 30), at(80, 30), at(80, 110), at(20, 110)), Figure.Shade.TINT),
        new Figure.Fill(List.of(at(30, 40), at(40, 40), at(35, 50)), Figure.Shade.PAPER),
        new Figure.Cluster(
            "U-1",
            "upright U-1",
            List.of(edge, new Figure.Cluster("U-1-hole", "its hole", hole(50, 60)))),
        new Figure.Cluster("brace", "brace B-1", List.of(brace)),
        new Figure.Arc(at(50, 60), 15, 0, 90, LineKind.VISIBLE),
        new Figure.Arc(at(50, 60), 18, 90, -270, LineKind.NEIGHBOUR),
        new Figure.Arc(at(50, 60), 20, 30, 360, LineKind.THIN),
        dimension());
  }

  private static List<Figure> hole(double x, double y) {
    return List.of(
        new Figure.Circle(at(x, y), 5, LineKind.VISIBLE),
        line(x - 8, y, x + 8, y, LineKind.CENTRE),
        line(x, y - 8, x, y + 8, LineKind.CENTRE));
  }

  private static Figure dimension() {
    return new Figure.Dimension(
        Length.roundedMm(600.5),
        "600.5",
        List.of(
            line(20, 20, 80, 20, LineKind.THIN),
            new Figure.Fill(List.of(at(20, 20), at(23, 20.5), at(23, 19.5)), Figure.Shade.INK),
            new Figure.Fill(List.of(at(80, 20), at(77, 20.5), at(77, 19.5)), Figure.Shade.INK),
            new Figure.Text(at(50, 21), 3.5, "600.5", Align.MIDDLE, 0)));
  }

  private static List<Figure> lettering() {
    return List.of(
        line(200, 20, 200, 190, LineKind.THIN),
        new Figure.Text(at(200, 180), 3.5, "starts on the line", Align.START, 0),
        new Figure.Text(at(200, 170), 3.5, "middle of it", Align.MIDDLE, 0),
        new Figure.Text(at(200, 160), 3.5, "ends on the line", Align.END, 0),
        new Figure.Text(at(200, 130), 5, "4 3/8\" × ⅜ ø10 ±½°", Align.MIDDLE, 90),
        new Figure.Text(at(200, 90), 2.5, "thirty degrees up", Align.START, 30),
        new Figure.Text(at(200, 70), 2.5, "two  spaces", Align.START, 0),
        new Figure.Text(at(200, 60), 2.5, "رف الشتلات 🌱", Align.START, 0),
        new Figure.Text(at(200, 50), 2.5, "<a & \"b\">", Align.END, 0));
  }

  private static Figure line(double x1, double y1, double x2, double y2, LineKind line) {
    return Figure.Polyline.line(at(x1, y1), at(x2, y2), line);
  }

  private static PaperPoint at(double x, double y) {
    return new PaperPoint(x, y);
  }
}
