package org.slatwright.testkit;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;

/** One template, longer than its page, in two tiles on it: one upright, one turned. */
final class EveryKindTemplates {

  private static final double LONG_MM = 400;
  private static final double TILE_MM = 205;
  private static final double WIDE_MM = 44;
  private static final double HOLE_MM = 300;
  private static final PaperPoint FIRST = new PaperPoint(20, 30);
  private static final PaperPoint SECOND = new PaperPoint(207, 245);

  private EveryKindTemplates() {}

  static Templates templates() {
    Template strip =
        new Template(
            "templates/U-drilling",
            "drilling <template> of upright U",
            List.of("Print at 100 %.", "Glue it on."),
            Length.mm(44),
            Length.mm(400),
            List.of(
                outline(new PaperPoint(0, 0), new PaperPoint(WIDE_MM, LONG_MM)),
                new Figure.Circle(new PaperPoint(WIDE_MM / 2, HOLE_MM), 5, LineKind.THIN)),
            List.of(
                new Template.Tile(
                    0, 0, 0, new PaperPoint(0, LONG_MM - TILE_MM), WIDE_MM, TILE_MM, FIRST, false),
                new Template.Tile(0, 1, 0, new PaperPoint(0, 0), WIDE_MM, TILE_MM, SECOND, true)));
    Sheet page =
        new Sheet(
            "templates/page-1",
            "templates, page 1",
            Paper.A4,
            false,
            List.of(
                new View(
                    "U-drilling-1",
                    "upper half",
                    Optional.of(new Scale(1, 1)),
                    List.of(
                        outline(FIRST, FIRST.moved(WIDE_MM, TILE_MM)),
                        new Figure.Circle(
                            FIRST.moved(WIDE_MM / 2, HOLE_MM - (LONG_MM - TILE_MM)),
                            5,
                            LineKind.THIN))),
                new View(
                    "U-drilling-2",
                    "lower half",
                    Optional.of(new Scale(1, 1)),
                    List.of(outline(SECOND.moved(-TILE_MM, 0), SECOND.moved(0, WIDE_MM))))));
    return new Templates(List.of(strip), List.of(page));
  }

  private static Figure outline(PaperPoint low, PaperPoint high) {
    return new Figure.Polyline(
        List.of(low, new PaperPoint(high.x(), low.y()), high, new PaperPoint(low.x(), high.y())),
        true,
        LineKind.VISIBLE);
  }
}
