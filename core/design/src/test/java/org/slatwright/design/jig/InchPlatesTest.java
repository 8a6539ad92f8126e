package org.slatwright.design.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContextBase;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Plate;

/** What a maker with an inch rule can count on, the stock being measured to the 64th. */
@Domain(InchPlatesTest.InchBenches.class)
class InchPlatesTest {

  private static final Length SIXTY_FOURTH = Length.inches(1, 64);
  private static final double MM_PER_128TH = 25.4 / 128;

  /** Stock to the 64th of an inch. */
  static class InchBenches extends DomainContextBase {

    @Provide
    Arbitrary<Bench> inchBenches() {
      return Benches.in(Unit.INCH);
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void everyStraightEdgeIsMarkedOutInSixtyFourths(@ForAll Bench bench) {
    for (Plate plate : plates(bench)) {
      lines(plate).flatMap(line -> Stream.of(line.from(), line.to())).forEach(this::isOnTheRule);
    }
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void everyOverallSizeIsAWholeNumberOfSixtyFourths(@ForAll Bench bench) {
    for (Plate plate : plates(bench)) {
      Extent overall = Extent.of(plate.boundary());
      isOnTheRule(new Point2(overall.width(), overall.height()));
    }
  }

  /** A hole is in the middle of things, which may be half of an odd 64th. */
  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void everyHoleCentreIsMarkedOutInHundredAndTwentyEighths(@ForAll Bench bench) {
    for (Plate plate : plates(bench)) {
      for (Outline.Circle bore : plate.bores()) {
        isOnA128th(bore.centre().x());
        isOnA128th(bore.centre().y());
        boolean seat = plate.mark().equals("J4");
        assertEquals(seat ? bench.bush().orElseThrow() : bench.dowel(), bore.diameter());
      }
    }
  }

  private static List<Plate> plates(Bench bench) {
    MadeJig made = JigMaker.make(bench.rack());
    Assume.that(made.jig().isPresent());
    return made.jig().orElseThrow().plates();
  }

  private static Stream<Outline.Line> lines(Plate plate) {
    return Stream.concat(Stream.of(plate.boundary()), plate.openings().stream())
        .map(Outline.Path.class::cast)
        .flatMap(path -> path.edges().stream())
        .filter(Outline.Line.class::isInstance)
        .map(Outline.Line.class::cast);
  }

  private void isOnTheRule(Point2 point) {
    assertTrue(point.x().isMultipleOf(SIXTY_FOURTH), () -> "x " + point.x());
    assertTrue(point.y().isMultipleOf(SIXTY_FOURTH), () -> "y " + point.y());
  }

  /** To the nanometre: half of 1/64 in is 198 437.5 nm. */
  private static void isOnA128th(Length length) {
    double count = length.inMm() / MM_PER_128TH;
    assertEquals(Math.rint(count) * MM_PER_128TH, length.inMm(), 1.1e-6);
  }
}
