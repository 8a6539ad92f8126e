package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.pdf.DrawnPage.Path;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** Every figure of every sheet, read back: in its order, place, width and shade. */
class DrawnPageTest {

  private static final double BOUND_MM = 0.0001;
  private static final Plan EVERY_KIND = SamplePlans.everyKind();

  @Test
  void everyFigureOfEverySheetLiesWhereItShould() throws ExportException, IOException {
    for (Plan plan : plans()) {
      List<Sheet> sheets =
          Stream.concat(plan.sheets().stream(), plan.templates().pages().stream()).toList();
      byte[] file = Exported.files(plan).bytes(Exported.PLAN);
      try (PDDocument document = Loader.loadPDF(file)) {
        for (int i = 0; i < sheets.size(); i++) {
          assertDrawn(sheets.get(i), DrawnPage.paths(document.getPage(i)), point -> point);
        }
      }
    }
  }

  private static List<Plan> plans() {
    return Stream.concat(SamplePlans.examples().stream(), Stream.of(EVERY_KIND)).toList();
  }

  @Test
  void templatePagesAreStretchedAboutTheirMiddleInBothBooks() throws ExportException, IOException {
    Map<String, String> option = Map.of("printed-length", "148.6mm x 149.1mm");
    UnaryOperator<PaperPoint> stretched =
        point ->
            new PaperPoint(
                105 + (point.x() - 105) * 150 / 148.6, 148.5 + (point.y() - 148.5) * 150 / 149.1);
    Sheet page = EVERY_KIND.templates().pages().get(0);
    for (String book : List.of(Exported.TEMPLATES, Exported.PLAN)) {
      byte[] file = Exported.files(EVERY_KIND, option).bytes(book);
      try (PDDocument document = Loader.loadPDF(file)) {
        int last = document.getNumberOfPages() - 1;
        assertDrawn(page, DrawnPage.paths(document.getPage(last)), stretched);
      }
    }
  }

  /** WareRack's rule of 6 in measured 5.94 in; the default leaves it as it is. */
  @Test
  void inAnInchPlanTheRuleIsOneOfSixInches() throws ExportException, IOException {
    Sheet page = EVERY_KIND.templates().pages().get(0);
    Plan inches =
        SamplePlans.withDrawings(
            WareRack.inInches(), List.of(), new Templates(List.of(), List.of(page)));
    UnaryOperator<PaperPoint> stretched =
        point ->
            new PaperPoint(
                105 + (point.x() - 105) * 6 / 5.94, 148.5 + (point.y() - 148.5) * 6 / 5.94);
    assertFirstDrawn(inches, Map.of("printed-length", "5.94in"), page, stretched);
    assertFirstDrawn(inches, Map.of(), page, point -> point);
  }

  private static void assertFirstDrawn(
      Plan plan, Map<String, String> option, Sheet page, UnaryOperator<PaperPoint> placing)
      throws ExportException, IOException {
    byte[] file = Exported.files(plan, option).bytes(Exported.TEMPLATES);
    try (PDDocument document = Loader.loadPDF(file)) {
      assertDrawn(page, DrawnPage.paths(document.getPage(0)), placing);
    }
  }

  @Test
  void sheetsAreNeverStretched() throws ExportException, IOException {
    Map<String, String> option = Map.of("printed-length", "148.6mm");
    byte[] file = Exported.files(EVERY_KIND, option).bytes(Exported.PLAN);
    try (PDDocument document = Loader.loadPDF(file)) {
      Sheet first = EVERY_KIND.sheets().get(0);
      assertDrawn(first, DrawnPage.paths(document.getPage(0)), point -> point);
    }
  }

  private static void assertDrawn(
      Sheet sheet, List<Path> paths, UnaryOperator<PaperPoint> placing) {
    List<Figure> figures =
        sheet.views().stream()
            .flatMap(view -> plain(view.figures()))
            .filter(figure -> !(figure instanceof Figure.Text))
            .toList();
    assertEquals(figures.size(), paths.size());
    for (int i = 0; i < figures.size(); i++) {
      assertDrawn(figures.get(i), paths.get(i), placing);
    }
  }

  private static Stream<Figure> plain(List<Figure> figures) {
    return figures.stream()
        .flatMap(
            figure -> {
              if (figure instanceof Figure.Dimension dimension) {
                return plain(dimension.drawn());
              }
              return figure instanceof Figure.Cluster cluster
                  ? plain(cluster.figures())
                  : Stream.of(figure);
            });
  }

  private static void assertDrawn(Figure figure, Path path, UnaryOperator<PaperPoint> placing) {
    if (figure instanceof Figure.Polyline polyline) {
      assertPen(polyline.line(), path);
      assertPoints(polyline.points(), path, placing);
      assertEquals(polyline.closed(), path.closed());
    } else if (figure instanceof Figure.Circle circle) {
      assertPen(circle.line(), path);
      assertPoints(turned(circle.centre(), circle.radius(), 0, 45, 8), path, placing);
      assertEquals(8, path.curves());
    } else if (figure instanceof Figure.Arc arc) {
      int pieces = (int) Math.ceil(Math.abs(arc.sweepDegrees()) / 45);
      double step = arc.sweepDegrees() / pieces;
      assertPen(arc.line(), path);
      assertPoints(
          turned(arc.centre(), arc.radius(), arc.startDegrees(), step, pieces), path, placing);
      assertEquals(pieces, path.curves());
    } else if (figure instanceof Figure.Fill fill) {
      assertPoints(fill.points(), path, placing);
      assertEquals(grey(fill.shade()), path.grey(), 0.001);
    }
  }

  private static List<PaperPoint> turned(
      PaperPoint centre, double radius, double start, double step, int count) {
    return Stream.iterate(0, i -> i <= count, i -> i + 1)
        .map(i -> Math.toRadians(start + i * step))
        .map(angle -> centre.moved(radius * Math.cos(angle), radius * Math.sin(angle)))
        .toList();
  }

  private static void assertPoints(
      List<PaperPoint> expected, Path path, UnaryOperator<PaperPoint> placing) {
    assertEquals(expected.size(), path.points().size());
    for (int i = 0; i < expected.size(); i++) {
      PaperPoint placed = placing.apply(expected.get(i));
      assertEquals(placed.x(), path.points().get(i).x(), BOUND_MM);
      assertEquals(placed.y(), path.points().get(i).y(), BOUND_MM);
    }
  }

  private static void assertPen(LineKind line, Path path) {
    boolean wide = line == LineKind.VISIBLE || line == LineKind.BORDER;
    assertEquals(-1, path.grey());
    assertEquals(line.widthMm(), path.width(), BOUND_MM);
    assertEquals(line.dashesMm().size(), path.dashes().size());
    for (int i = 0; i < path.dashes().size(); i++) {
      assertEquals(line.dashesMm().get(i), path.dashes().get(i), BOUND_MM);
    }
    assertEquals(wide ? 1 : 0, path.cap());
    assertEquals(wide ? 1 : 0, path.join());
  }

  /** As the svg exporter has them: #000, #e4e4e4, #fff. */
  private static double grey(Figure.Shade shade) {
    return switch (shade) {
      case INK -> 0;
      case TINT -> 0xe4 / 255.0;
      case PAPER -> 1;
    };
  }
}
