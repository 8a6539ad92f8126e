package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Step;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

class OrderOfWorkSheetTest {

  private static final String CACTUS_RACK =
      """
      slatwright: 1
      title: Cactus rack
      units: %s
      timber:
        frame: { section: 44 mm x 44 mm, species: larch, lengths: [ { length: 2400 mm } ] }
        slats: { section: 18 mm x 95 mm }
        dowel: { diameter: 10 mm }
      rack: { bays: 2, interior-width: 580 mm, rail-length: 320 mm, upright: 1400 mm }
      slats: { per-shelf: 3 }
      shop: { paper: %s }
      """;

  @ParameterizedTest
  @CsvSource({"mm, A4", "mm, A3", "in, letter", "in, tabloid"})
  void everyStepIsToldInItsOrderAndOfThoseAlikeTheFirstWhole(String units, String paper)
      throws Exception {
    Plan plan = plan(units, paper);
    String said = said(sheets(plan));

    int from = 0;
    Map<List<Object>, Integer> told = new HashMap<>();
    for (Step step : plan.work().steps()) {
      List<String> parts = new ArrayList<>(List.of(step.number() + " " + step.title()));
      Integer like = told.putIfAbsent(List.of(step.doing(), step.check()), step.number());
      if (like != null) {
        parts.add("As step " + like + ", with its check.");
      } else {
        step.doing().forEach(sentence -> parts.add(sentence.in(plan.lengths())));
        parts.add("Check: " + step.check().in(plan.lengths()));
        parts.add(step.caution());
      }
      for (String part : parts) {
        int at = said.indexOf(part, from);
        assertTrue(at >= 0, () -> "'" + part + "' is not where it belongs");
        from = at;
      }
    }
  }

  @Test
  void theStepsAreNumberedSheetsAfterTheOrderOfCutting() throws Exception {
    List<String> titles = plan("mm", "A4").sheets().stream().map(Sheet::title).distinct().toList();

    int work = titles.indexOf("Order of work");
    assertEquals(
        List.of("Order of cutting", "Order of work", "Checks and cautions"),
        titles.subList(work - 1, work + 2));
  }

  @Test
  void whatAPictureShowsIsDrawnOnceForItsStep() throws Exception {
    Plan plan = plan("mm", "A4");

    List<String> drawn =
        sheets(plan).stream()
            .flatMap(sheet -> sheet.views().stream())
            .flatMap(view -> view.figures().stream())
            .filter(Figure.Cluster.class::isInstance)
            .map(figure -> ((Figure.Cluster) figure).id())
            .toList();

    assertEquals(
        plan.work().steps().stream()
            .filter(step -> !step.shows().isEmpty())
            .map(step -> "picture-" + step.id())
            .toList(),
        drawn);
  }

  /** Against rays from the eye, which know nothing of how pictures are drawn. */
  @Test
  void rightSidesOfWhatAStepAddsAreShadedAndNoOther() throws Exception {
    Assembly rack = plan("mm", "A4").assembly();
    PaperBox room = new PaperBox(0, 0, 150, 150);
    Set<String> added =
        rack.groups().stream()
            .filter(group -> group.kind() == Group.Kind.SHELF)
            .flatMap(group -> group.pieces().stream())
            .map(Piece::id)
            .collect(Collectors.toSet());
    List<Piece> shown =
        rack.pieces().stream().filter(piece -> piece.part().role() != Role.DOWEL).toList();
    List<Figure> figures = new StepPicture(shown, added).figures(room);
    Sight sight = new Sight(rack, room);

    int shaded = 0;
    for (double x = 0.31; x < room.right(); x += 0.83) {
      for (double y = 0.17; y < room.top(); y += 0.83) {
        Coordinate place = new Coordinate(x, y);
        if (isClearOfLines(figures, place)) {
          Sight.Seen seen = sight.at(place);
          boolean right = seen.side() == Sight.Side.RIGHT && added.contains(seen.piece());
          shaded += right ? 1 : 0;
          assertEquals(right, isShaded(figures, place), () -> place + ": " + seen);
        }
      }
    }
    assertTrue(shaded > 20, "slats show their right ends");
  }

  private static boolean isClearOfLines(List<Figure> figures, Coordinate place) {
    return figures.stream()
        .filter(Figure.Polyline.class::isInstance)
        .map(figure -> ((Figure.Polyline) figure).points())
        .allMatch(line -> Distance.pointToSegment(place, at(line.get(0)), at(line.get(1))) > 0.01);
  }

  private static boolean isShaded(List<Figure> figures, Coordinate place) {
    return figures.stream()
        .filter(Figure.Fill.class::isInstance)
        .map(figure -> ring(((Figure.Fill) figure).points()))
        .anyMatch(ring -> PointLocation.isInRing(place, ring));
  }

  private static Coordinate[] ring(List<PaperPoint> points) {
    List<Coordinate> ring = new ArrayList<>(points.stream().map(each -> at(each)).toList());
    ring.add(ring.get(0));
    return ring.toArray(Coordinate[]::new);
  }

  private static Coordinate at(PaperPoint point) {
    return new Coordinate(point.x(), point.y());
  }

  private static List<Sheet> sheets(Plan plan) {
    return plan.sheets().stream().filter(sheet -> sheet.title().equals("Order of work")).toList();
  }

  /** Line after line, as it is read. */
  private static String said(List<Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> Inked.of(sheet).words().stream())
        .map(Inked.Words::text)
        .collect(Collectors.joining(" "));
  }

  private static Plan plan(String units, String paper) throws RackFileException {
    byte[] bytes = CACTUS_RACK.formatted(units, paper).getBytes(StandardCharsets.UTF_8);
    return Planner.plan(RackFileReader.read(bytes, "rack.yaml", List.of()));
  }
}
