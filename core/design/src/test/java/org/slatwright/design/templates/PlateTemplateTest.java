package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.drafting.Inked;
import org.slatwright.design.outline.Polygons;
import org.slatwright.design.templates.printing.Draft;

class PlateTemplateTest {

  static List<Drawn> examplesAndOneWithABush() throws IOException {
    List<Drawn> racks = new ArrayList<>(Drawn.examples());
    racks.add(Drawn.example("seed-trays", "shop.guide-bush=16"));
    return racks;
  }

  @ParameterizedTest
  @MethodSource("examplesAndOneWithABush")
  void outlineOpeningsAndBoresAreThoseOfThePlate(Drawn rack) {
    for (Plate plate : rack.jig().orElseThrow().plates()) {
      Ruled sheet = new Ruled(rack.draft(plate.mark()));
      Envelope drawn = new Envelope();
      sheet.lines(LineKind.VISIBLE).map(Ruled::around).forEach(drawn::expandToInclude);
      Extent extent = Extent.of(plate.boundary());
      assertEquals(extent.width().inMm(), drawn.getWidth(), Ruled.EXACT);
      assertEquals(extent.height().inMm(), drawn.getHeight(), Ruled.EXACT);
      List<Outline> all =
          Stream.concat(Stream.of(plate.boundary()), plate.openings().stream()).toList();
      assertEquals(
          all.stream().mapToLong(PlateTemplateTest::straight).sum(),
          sheet.lines(LineKind.VISIBLE).count());
      assertEquals(plate.bores().size(), sheet.circles().size());
      for (int i = 0; i < plate.bores().size(); i++) {
        Outline.Circle bore = plate.bores().get(i);
        assertTrue(
            Ruled.near(
                sheet.circles().get(i).centre().moved(-drawn.getMinX(), -drawn.getMinY()),
                bore.centre().x().inMm(),
                bore.centre().y().inMm()));
        assertEquals(bore.diameter().inMm() / 2, sheet.circles().get(i).radius());
      }
      assertTrue(sheet.texts().contains("Scale 1:1, " + plate.quantity() + " off"));
    }
  }

  @ParameterizedTest
  @MethodSource("examplesAndOneWithABush")
  void theMarkStaysOnThePieceThatIsCutOut(Drawn rack) {
    for (Plate plate : rack.jig().orElseThrow().plates()) {
      Draft draft = rack.draft(plate.mark());
      Inked inked = Inked.of(draft.figures());
      Envelope lines = new Envelope();
      new Ruled(draft).lines(LineKind.VISIBLE).map(Ruled::around).forEach(lines::expandToInclude);
      Polygon left =
          Polygons.of(
              plate.boundary(),
              Stream.concat(plate.openings().stream(), plate.bores().stream()).toList());
      Envelope mark =
          inked.words().stream()
              .filter(words -> words.text().equals(plate.mark()))
              .map(Inked.Words::room)
              .findFirst()
              .orElseThrow();
      mark.translate(-lines.getMinX(), -lines.getMinY());
      assertTrue(left.contains(new GeometryFactory().toGeometry(mark)), plate.mark());
    }
  }

  private static long straight(Outline outline) {
    return outline instanceof Outline.Path path
        ? path.edges().stream().filter(Outline.Line.class::isInstance).count()
        : 0;
  }
}
