package org.slatwright.exporter.svg;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.templates.printing.Draft;
import org.slatwright.design.templates.printing.Printing;
import org.slatwright.testkit.JoinedStrip;
import org.slatwright.testkit.SeenPage;

/** A strip of two metres with a hole near each end, printed, measured and laid together. */
class PrintedStripTest {

  private static final double RADIUS = 4;
  private static final PaperPoint LOW = new PaperPoint(22, 30);
  private static final PaperPoint HIGH = new PaperPoint(22, 1970);

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void theHolesAreAsFarApartAsTheyShouldBe(Renderer renderer) throws Exception {
    Templates templates =
        new Printing("Stand for potted herbs", Unit.MM, Paper.A4, Length.inches(1, 4))
            .print(List.of(strip()));
    List<SeenPage> pages = new ArrayList<>();
    for (Sheet page : templates.pages()) {
      pages.add(new SeenPage(page, renderer.draw(Exported.bytes(page, "outlines"), folder)));
    }
    pages.forEach(SeenPage::assertTrueToSize);
    new JoinedStrip(templates.whole().get(0), pages::get).assertTrueToSize();
  }

  private static Draft strip() {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure.Polyline(
            List.of(
                new PaperPoint(0, 0),
                new PaperPoint(44, 0),
                new PaperPoint(44, 2000),
                new PaperPoint(0, 2000)),
            true,
            LineKind.VISIBLE));
    List<Draft.Disc> discs = new ArrayList<>();
    for (PaperPoint hole : List.of(LOW, HIGH)) {
      figures.add(new Figure.Circle(hole, RADIUS, LineKind.THIN));
      discs.add(new Draft.Disc(hole, RADIUS + 3));
    }
    return new Draft(
        "templates/U-drilling",
        "holes of the upright",
        List.of(),
        Length.mm(44),
        Length.mm(2000),
        figures,
        discs);
  }
}
