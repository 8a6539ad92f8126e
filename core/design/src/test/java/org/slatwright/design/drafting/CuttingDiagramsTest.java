package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.design.cutting.Sawn;
import org.slatwright.design.drafting.DrawnBoard.DrawnPiece;
import org.slatwright.design.drafting.Spans.Span;

class CuttingDiagramsTest {

  private static final double EXACT = 1e-6;

  /** The examples, and the racks below, on every paper. */
  static Stream<Sawn> racks() throws Exception {
    Stream.Builder<String> files = Stream.builder();
    for (var example : SheetTest.examples()) {
      files.add(Files.readString(example));
    }
    files.add(LARGE).add(RIPPED).add(RIPPED_IN_INCHES);
    return files
        .build()
        .flatMap(
            yaml ->
                Stream.of(Paper.values())
                    .map(paper -> Sawn.of(yaml, "shop.paper=" + paper.word())));
  }

  @Provide
  static Arbitrary<Sawn> randomRacks() {
    return Arbitraries.oneOf(Sawn.any(), Sawn.any(), Sawn.ragged());
  }

  @ParameterizedTest
  @MethodSource("racks")
  void everyPieceIsDrawnOnceAtItsPlace(Sawn sawn) {
    assertDrawn(sawn);
  }

  @Property(tries = 60)
  void everyPieceOfAnyRackIsDrawnOnceAtItsPlace(@ForAll("randomRacks") Sawn sawn) {
    assertDrawn(sawn);
  }

  @ParameterizedTest
  @MethodSource("racks")
  void nothingLiesOnAnotherOrLeavesTheBorder(Sawn sawn) {
    assertTidy(sawn);
  }

  @Property(tries = 60)
  void nothingOfAnyRackLiesOnAnotherOrLeavesTheBorder(@ForAll("randomRacks") Sawn sawn) {
    assertTidy(sawn);
  }

  @ParameterizedTest
  @MethodSource("racks")
  void noLeaderCrossesAnotherPiece(Sawn sawn) {
    diagrams(sawn).forEach(CuttingDiagramsTest::assertLeadersClear);
  }

  @Property(tries = 60)
  void noLeaderOfAnyRackCrossesAnotherPiece(@ForAll("randomRacks") Sawn sawn) {
    diagrams(sawn).forEach(CuttingDiagramsTest::assertLeadersClear);
  }

  /** Every mark and length can be read: on its piece, or beside its board. */
  @Property(tries = 60)
  void everyPieceIsLettered(@ForAll("randomRacks") Sawn sawn) {
    for (Sheet sheet : diagrams(sawn)) {
      for (DrawnBoard board : DrawnBoard.on(sheet)) {
        for (DrawnPiece piece : board.pieces()) {
          assertTrue(
              board.words().stream().anyMatch(words -> words.contains(piece.title())),
              () -> board.id() + " does not say " + piece.title() + ": " + board.words());
        }
      }
    }
  }

  @Property(tries = 100)
  void piecesLossesAndOffcutsAddUpToEveryBoardThatIsNotRipped(@ForAll("randomRacks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        if (!isRipped(board)) {
          Losses losses = new Losses(board, timber.kerf(), timber.endTrim());
          long used =
              Stream.concat(
                      board.cuts().stream().map(Cut::length),
                      board.offcuts().stream().map(CutBoard.Offcut::length))
                  .mapToLong(length -> length.nanometres())
                  .sum();
          long lost =
              Stream.of(losses.trimmed(), losses.avoided(), losses.sawn())
                  .flatMap(spans -> spans.spans().stream())
                  .mapToLong(span -> span.to() - span.from())
                  .sum();
          assertEquals(board.length().nanometres(), used + lost, board.toString());
          losses
              .sawn()
              .spans()
              .forEach(
                  span -> assertFalse(span.length().isMoreThan(timber.kerf()), span.toString()));
        }
      }
    }
  }

  @Property(tries = 100)
  void nothingOfABoardIsLeftUnexplained(@ForAll("randomRacks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        Losses losses = new Losses(board, timber.kerf(), timber.endTrim());
        assertEquals(0, unexplained(losses), 1e-3, () -> board + " " + timber.kerf());
      }
    }
  }

  /** In mm²: what is neither a piece, an offcut, a cut beside them, trimmed nor avoided. */
  private static double unexplained(Losses losses) {
    CutBoard board = losses.board();
    BoardPlace full = new BoardPlace(0, 0, 1, 1);
    PaperBox whole = full.stretch(new Span(0, board.length().nanometres()), board.width());
    double kerf = losses.kerf().inMm();
    List<Geometry> told =
        Stream.of(
                board.cuts().stream().map(cut -> full.box(cut).grown(kerf, kerf)),
                board.offcuts().stream().map(offcut -> full.box(offcut).grown(kerf, kerf)),
                Stream.of(losses.trimmed(), losses.avoided())
                    .flatMap(spans -> spans.spans().stream())
                    .map(span -> full.stretch(span, board.width())))
            .flatMap(boxes -> boxes)
            .map(CuttingDiagramsTest::area)
            .toList();
    return OverlayNGRobust.overlay(area(whole), OverlayNGRobust.union(told), OverlayNG.DIFFERENCE)
        .getArea();
  }

  private static Geometry area(PaperBox box) {
    return new GeometryFactory()
        .toGeometry(new Envelope(box.left(), box.right(), box.bottom(), box.top()));
  }

  @Test
  void theKeyHasWhatIsSeenAndNoMore() {
    assertEquals(
        List.of("offcut", "sawn away", "spare piece"), key(Sawn.of(PLAIN, "shop.end-trim=0")));
    assertEquals(
        List.of("offcut", "trim, squared off the end", "sawn away", "spare piece"),
        key(Sawn.of(PLAIN, "shop.end-trim=7")));
    assertEquals(
        List.of(
            "offcut",
            "trim, squared off the end",
            "avoided: no piece may lie here",
            "sawn away",
            "spare piece"),
        key(Sawn.of(RIPPED)));
  }

  /** Thirty marks of which no two follow each other take more than a line of large letters. */
  @Test
  void manyMarksStandInSmallLettersBelowTheCaption() {
    Sawn sawn =
        Sawn.of(
            SCATTERED,
            "rack.rail-length=1100",
            "slats.per-shelf=10",
            "rack.openings=[{ clear: even, count: 5 }]");
    List<Figure.Text> texts =
        diagrams(sawn).stream()
            .flatMap(sheet -> sheet.views().stream())
            .flatMap(view -> view.figures().stream())
            .filter(Figure.Cluster.class::isInstance)
            .flatMap(board -> ((Figure.Cluster) board).figures().stream())
            .filter(Figure.Text.class::isInstance)
            .map(Figure.Text.class::cast)
            .toList();

    Figure.Text marks =
        texts.stream()
            .filter(text -> text.text().startsWith("B1, B3, B5"))
            .findFirst()
            .orElseThrow();
    assertEquals(2.5, marks.height());
  }

  private static List<Sheet> diagrams(Sawn sawn) {
    List<SheetDrawing> drawings = CuttingDiagrams.of(sawn.rack(), sawn.plan());
    return IntStream.range(0, drawings.size())
        .mapToObj(i -> drawings.get(i).sheet(i + 1, drawings.size()))
        .toList();
  }

  /** Of the first sheet. */
  private static List<String> key(Sawn sawn) {
    return diagrams(sawn).get(0).views().stream()
        .filter(view -> view.id().equals("key"))
        .flatMap(view -> view.figures().stream())
        .filter(Figure.Text.class::isInstance)
        .map(text -> ((Figure.Text) text).text())
        .toList();
  }

  private static boolean isRipped(CutBoard board) {
    return Stream.concat(
            board.cuts().stream().map(Cut::width),
            board.offcuts().stream().map(CutBoard.Offcut::width))
        .anyMatch(width -> !width.equals(board.width()));
  }

  private static void assertDrawn(Sawn sawn) {
    Map<String, DrawnBoard> drawn = new HashMap<>();
    for (Sheet sheet : diagrams(sawn)) {
      for (DrawnBoard board : DrawnBoard.on(sheet)) {
        assertEquals(null, drawn.put(board.id(), board), board.id() + " is drawn twice");
      }
    }
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        assertDrawn(sawn, board, drawn.remove("board-" + board.marks().get(0)));
      }
    }
    assertEquals(Map.of(), drawn, "drawn and not in the plan");
  }

  private static void assertDrawn(Sawn sawn, CutBoard board, DrawnBoard drawn) {
    double along = drawn.factor();
    Envelope whole = drawn.outline();
    double across = whole.getHeight() / board.width().inMm();
    assertEquals(board.length().inMm() * along, whole.getWidth(), EXACT);
    assertTrue(across >= along - EXACT, "never narrower than to scale");
    assertEquals(board.cuts().size(), drawn.pieces().size(), drawn.id());
    for (int i = 0; i < board.cuts().size(); i++) {
      Cut cut = board.cuts().get(i);
      DrawnPiece piece = drawn.pieces().get(i);
      Envelope box = piece.outline();
      assertEquals(
          cut.mark() + " " + new LengthFormat(sawn.rack().units()).number(cut.length()),
          piece.title(),
          drawn.id());
      assertEquals(cut.from().inMm() * along, box.getMinX() - whole.getMinX(), EXACT);
      assertEquals(cut.length().inMm() * along, box.getWidth(), EXACT);
      assertEquals(cut.across().inMm() * across, box.getMinY() - whole.getMinY(), EXACT);
      assertEquals(cut.width().inMm() * across, box.getHeight(), EXACT);
    }
  }

  private static void assertTidy(Sawn sawn) {
    for (Sheet sheet : diagrams(sawn)) {
      Tidy.check(sheet);
      Envelope frame = DrawnBoard.frame(sheet);
      for (DrawnBoard board : DrawnBoard.on(sheet)) {
        assertTrue(frame.covers(board.all()), () -> board.id() + " leaves the frame");
      }
    }
  }

  private static void assertLeadersClear(Sheet sheet) {
    for (DrawnBoard board : DrawnBoard.on(sheet)) {
      for (DrawnPiece piece : board.pieces()) {
        Envelope inside = new Envelope(piece.outline());
        inside.expandBy(-0.01);
        for (Figure.Polyline leader : board.leaders()) {
          if (!DrawnBoard.endsIn(leader, inside)) {
            assertFalse(
                DrawnBoard.crosses(leader, inside),
                () -> sheet.name() + " " + board.id() + ": a leader crosses " + piece.title());
          }
        }
      }
    }
  }

  private static final String PLAIN =
      """
      slatwright: 1
      title: Seedling rack
      timber:
        frame: { section: 44 x 44, lengths: [ { length: 2400 } ] }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 400
        rail-length: 300
        upright: 1000
        openings: [ even ]
      slats: { per-shelf: 2 }
      joint: { fixing: { kind: brad, length: 40, diameter: 1.2 } }
      shop: { kerf: 3 }
      """;

  private static final String LARGE =
      """
      slatwright: 1
      title: Potting store, twenty shelves in six bays
      timber:
        frame:
          section: 44 x 44
          lengths: [ { length: 5400, price: 14.20 }, { length: 2400, on-hand: 7 } ]
        slats:
          section: 19 x 62
          lengths: [ { length: 3000, price: 3.10 }, { length: 2100, on-hand: 11 } ]
        dowel: { diameter: 10, rod-length: 1000, price: 1.10 }
      rack:
        bays: 6
        interior-width: 610
        rail-length: 400
        openings: [ { clear: 90, count: 10 }, { clear: 120, count: 9 } ]
      slats: { per-shelf: 5, run: per-bay }
      joint: { fixing: { kind: screw } }
      """;

  /** Four, two and three strips a board, short spacers from what is over. */
  private static final String RIPPED =
      """
      slatwright: 1
      title: Bean-pole rack
      timber:
        frame: { section: 44 x 44, species: larch }
        slats:
          section: 19 x 45
          boards:
            - { length: 1480, width: 200, thickness: 20, count: 2, avoid: [ 700..760 ] }
            - { length: 2210, width: 118, thickness: 19, count: 2 }
            - { length: 900, width: 150, thickness: 22, count: 4, avoid: [ 0..30, 860..872 ] }
            - { length: 6200, width: 47, thickness: 20, avoid: [ 1080..1130, 1300..1345 ] }
        dowel: { diameter: 10, rod-length: 1000 }
      rack:
        interior-width: 480
        rail-length: 420
        openings: [ { clear: 180, count: 2 }, { clear: 40, count: 1 } ]
      slats: { per-shelf: 6 }
      joint: { fixing: { kind: brad } }
      """;

  private static final String RIPPED_IN_INCHES =
      """
      slatwright: 1
      title: Glaze bucket rack
      units: in
      timber:
        frame: { section: 1 1/2 x 1 1/2, lengths: [ { length: 96 }, { length: 144, on-hand: 1 } ] }
        slats:
          boards:
            - { length: 37 5/16, width: 5 7/16, thickness: 3/4, count: 5, avoid: [ 18..19 1/2 ] }
            - { length: 71 1/2, width: 3 1/2, thickness: 23/32, count: 5 }
            - { length: 51 3/16, width: 2 1/2, thickness: 3/4, count: 8, avoid: [ 0..1/2 ] }
        dowel: { diameter: 3/8, rod-length: 36, price: 0.90 }
      rack:
        interior-width: 26
        rail-length: 16
        bays: 2
        openings: [ { clear: 12, count: 3 } ]
      slats: { gap-range: 1/4..1 }
      joint: { fixing: { kind: screw } }
      """;

  /** Boards of two lengths by turns, thirty of each. */
  private static final String SCATTERED =
      PLAIN.replace(
          "slats: { section: 18 x 95 }",
          "slats: { section: 18 x 95, boards: [ "
              + "{ length: 520, width: 95, thickness: 18 }, { length: 510, width: 95, thickness: 18 }, "
                  .repeat(30)
              + "] }");
}
