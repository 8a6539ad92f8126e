package org.slatwright.design.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Solid;

/** The jig for a 3-D printer is a body that can be printed, and goes over the stock. */
@Domain(Benches.class)
class PrintedSaddleTest {

  @Property(tries = 30)
  void everyBodyIsClosedWithoutGapOrOverlap(@ForAll Bench bench) {
    MadeJig made = JigMaker.make(bench.rack());
    Assume.that(made.jig().isPresent());
    JigMaker.solids(bench.rack(), made).forEach(PrintedSaddleTest::assertClosed);
  }

  /** Each edge is walked once in either direction, and no triangle is flat. */
  private static void assertClosed(Solid solid) {
    Map<List<Integer>, Integer> walked = new HashMap<>();
    for (Solid.Triangle t : solid.triangles()) {
      assertTrue(t.a() != t.b() && t.b() != t.c() && t.c() != t.a());
      walked.merge(List.of(t.a(), t.b()), 1, Integer::sum);
      walked.merge(List.of(t.b(), t.c()), 1, Integer::sum);
      walked.merge(List.of(t.c(), t.a()), 1, Integer::sum);
    }
    walked.forEach(
        (edge, times) -> {
          assertEquals(1, times, () -> solid.name() + " walks " + edge);
          assertTrue(walked.containsKey(List.of(edge.get(1), edge.get(0))), solid.name());
        });
    assertTrue(volume(solid) > 0, "its triangles face outward");
  }

  @Example
  void theBodyHasTheVolumeOfItsParts() {
    Bench bench = Bench.square(44, 10, 6);
    assertEquals(byHand(bench, Math.PI * 25 * 30), volume(body(bench)), 5);
  }

  /** In the depth of four of the five sheets. */
  @Example
  void aBushIsSeatedOnAFloorBoredForTheBit() {
    Bench bench = Bench.square(44, 10, 6).withBush(15);
    double bored = Math.PI * (7.5 * 7.5 * 24 + 5 * 5 * 6);
    assertEquals(byHand(bench, bored), volume(body(bench)), 5);
  }

  /**
   * Square stock of 44 mm and sheet of 6 mm: a guide 30 deep less its bores and window; cheeks 6
   * thick and 41 long, and their arms 18.4 high, with a slot of 20.4 x 6.4.
   */
  private static double byHand(Bench bench, double bored) {
    Saddle saddle = Saddle.of(bench.rack());
    double face = saddle.guideWidth().inMm() * saddle.guideHeight().inMm();
    double arm = 6 + 6 + 0.4 + 6;
    double cheek = saddle.height().inMm() * 41 + arm * (6 + 20.4 + 6) - 20.4 * 6.4;
    return (face - 16 * 6) * 30 - bored + 2 * 6 * cheek;
  }

  private static Solid body(Bench bench) {
    return JigMaker.solids(bench.rack(), JigMaker.make(bench.rack())).get(0);
  }

  /** The sum of the tetrahedra under its triangles (divergence theorem), in mm3. */
  private static double volume(Solid solid) {
    List<double[]> corners = solid.corners().stream().map(PrintedSaddleTest::mm).toList();
    return solid.triangles().stream()
        .mapToDouble(t -> sixTimes(corners.get(t.a()), corners.get(t.b()), corners.get(t.c())) / 6)
        .sum();
  }

  private static double sixTimes(double[] a, double[] b, double[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        - a[1] * (b[0] * c[2] - b[2] * c[0])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }

  private static double[] mm(Point3 point) {
    return new double[] {inMm(point.x()), inMm(point.y()), inMm(point.z())};
  }

  private static double inMm(Length length) {
    return length.inMm();
  }
}
