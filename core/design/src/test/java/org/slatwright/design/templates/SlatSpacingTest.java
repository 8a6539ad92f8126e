package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.framing.UnevenRack;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.templates.printing.Draft;

/** The strips, laid on every rail of the rack in turn, the front end against the front upright. */
class SlatSpacingTest {

  @Provide
  Arbitrary<Drawn> racks() {
    return Drawn.any();
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void someStripFitsEveryRowOfAnExampleOnEveryRail(Drawn rack) {
    assertFit(rack);
  }

  @Property(tries = 60)
  void someStripFitsEveryRowOnEveryRail(@ForAll("racks") Drawn rack) {
    assertFit(rack);
  }

  @Test
  void shelvesOfDifferentBoardsHaveAStripEach() {
    Rack rack = UnevenRack.make();
    Drawn drawn = Drawn.of(rack);
    assertEquals(
        List.of("templates/slat-spacing", "templates/slat-spacing-2"),
        strips(drawn).stream().map(Draft::name).toList());
    List<String> lower = new Ruled(drawn.draft("slat-spacing")).texts();
    assertTrue(
        lower.containsAll(
            List.of("Shelf 1: left frame, right frame", "margin 11", "S3, 100", "gap 20", "111")),
        lower::toString);
  }

  @Test
  void rowsThatMeetOnAnInnerFrameHaveAStripForEachHalf() {
    Drawn rack = Drawn.example("nursery-bench");
    assertEquals(3, strips(rack).size());
    List<String> texts = new Ruled(rack.draft("slat-spacing-2")).texts();
    assertTrue(
        texts.contains("Shelf 1 to 3: frame 2 from the left, frame 3 from the left"),
        texts::toString);
  }

  private static void assertFit(Drawn rack) {
    List<Draft> strips = strips(rack);
    Set<Draft> used = new HashSet<>();
    for (Piece rail : rack.assembly().pieces(Role.RAIL)) {
      List<Fastener> nails =
          rack.assembly().fasteners().stream()
              .filter(nail -> nail.into().id().equals(rail.id()))
              .toList();
      for (List<Piece> run : runs(nails)) {
        List<Draft> fitting =
            strips.stream().filter(strip -> fits(new Ruled(strip), rail, run, nails)).toList();
        assertEquals(1, fitting.size(), () -> "strips for " + rail.id());
        used.addAll(fitting);
      }
    }
    assertEquals(strips.size(), used.size(), "a strip that fits nowhere");
  }

  private static List<Draft> strips(Drawn rack) {
    return rack.drafts().stream()
        .filter(draft -> draft.name().startsWith("templates/slat-spacing"))
        .toList();
  }

  /** The slats nailed to a rail, those that start at the same place together. */
  private static List<List<Piece>> runs(List<Fastener> nails) {
    List<List<Piece>> runs = new ArrayList<>();
    for (Piece slat : nails.stream().map(Fastener::through).distinct().toList()) {
      runs.stream()
          .filter(run -> run.get(0).box().low().x().equals(slat.box().low().x()))
          .findFirst()
          .ifPresentOrElse(run -> run.add(slat), () -> runs.add(new ArrayList<>(List.of(slat))));
    }
    return runs;
  }

  private static boolean fits(Ruled strip, Piece rail, List<Piece> run, List<Fastener> nails) {
    double left = strip.folds().get(0);
    List<Double> ends = strip.levels(left, strip.folds().get(1));
    double front = ends.get(0);
    Box bearer = rail.box();
    double x = bearer.low().x().inMm() - left;
    double y = bearer.low().y().inMm() - front;
    List<Envelope> slats =
        strip.boxes().stream().filter(box -> box.getMinY() >= front - Ruled.EXACT).toList();
    List<Fastener> driven =
        nails.stream()
            .filter(nail -> run.stream().anyMatch(slat -> slat.id().equals(nail.through().id())))
            .toList();
    return Ruled.near(ends.get(1) + y, bearer.high().y().inMm())
        && Ruled.near(strip.folds().get(1) + x, bearer.high().x().inMm())
        && sameSlats(slats, run, bearer, x, y)
        && sameNails(strip.circles(), driven, x, y);
  }

  private static boolean sameSlats(
      List<Envelope> drawn, List<Piece> run, Box bearer, double x, double y) {
    return drawn.size() == run.size()
        && run.stream()
            .map(slat -> onRail(slat.box(), bearer))
            .allMatch(
                slat ->
                    drawn.stream()
                        .map(box -> moved(box, x, y))
                        .anyMatch(box -> Ruled.near(box, slat)));
  }

  private static Envelope onRail(Box slat, Box rail) {
    Envelope one =
        new Envelope(
            slat.low().x().inMm(),
            slat.high().x().inMm(),
            slat.low().y().inMm(),
            slat.high().y().inMm());
    return one.intersection(
        new Envelope(
            rail.low().x().inMm(),
            rail.high().x().inMm(),
            rail.low().y().inMm(),
            rail.high().y().inMm()));
  }

  private static Envelope moved(Envelope box, double x, double y) {
    Envelope moved = new Envelope(box);
    moved.translate(x, y);
    return moved;
  }

  private static boolean sameNails(
      List<Figure.Circle> drawn, List<Fastener> driven, double x, double y) {
    return drawn.size() == driven.size()
        && driven.stream()
            .allMatch(
                nail ->
                    drawn.stream()
                        .anyMatch(
                            circle ->
                                Ruled.near(
                                    circle.centre().moved(x, y),
                                    nail.head().x().inMm(),
                                    nail.head().y().inMm())));
  }
}
