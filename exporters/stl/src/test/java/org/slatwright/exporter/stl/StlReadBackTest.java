package org.slatwright.exporter.stl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Solid;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.OutsideTool;
import org.slatwright.testkit.SamplePlans;

/**
 * What ADMesh, a reader of STL that is none of ours, finds in our files: a closed surface, every
 * triangle facing outward, of the size and volume of the solid.
 */
class StlReadBackTest {

  @TempDir private Path folder;

  @Test
  void everyBodyOfEveryExampleIsClosedAndFacesOutward() throws IOException, InterruptedException {
    OutsideTool admesh = OutsideTool.thatRuns("admesh", "--version");
    List<Solid> solids =
        SamplePlans.examples().stream().map(Plan::solids).flatMap(List::stream).toList();
    assertFalse(solids.isEmpty());
    for (Solid solid : solids) {
      assertSound(solid, read(admesh, solid));
    }
  }

  @Test
  void theVolumeOfAKnownBodyIsRead() throws IOException, InterruptedException {
    OutsideTool admesh = OutsideTool.thatRuns("admesh", "--version");
    Solid corner = SamplePlans.everyKind().solids().get(0);
    assertEquals(30.0 * 12 * 12 / 6, number(read(admesh, corner), "Volume *: *([-0-9.]+)"), 0.01);
  }

  private String read(OutsideTool admesh, Solid solid) throws IOException, InterruptedException {
    Path file = folder.resolve("body.stl");
    Files.write(file, BinaryStl.of(solid));
    return admesh.run("--no-check", "-e", "-f", "-d", "-v", file.toString());
  }

  private static void assertSound(Solid solid, String report) {
    int triangles = solid.triangles().size();
    assertEquals(triangles, number(report, "Number of facets *: *([0-9]+)"), solid.name());
    assertEquals(1, number(report, "Number of parts *: *([0-9]+)"), solid.name());
    for (String fault :
        List.of(
            "Degenerate facets",
            "Facets removed",
            "Facets added",
            "Facets reversed",
            "Backwards edges",
            "Normals fixed",
            "Edges fixed")) {
      assertEquals(0, number(report, fault + " *: *([0-9]+)"), fault + " in " + solid.name());
    }
    assertEquals(0, number(report, "Total disconnected facets *: *([0-9]+)"), solid.name());
    assertReaches(report, "X", farthest(solid, Point3::x));
    assertReaches(report, "Y", farthest(solid, Point3::y));
    assertReaches(report, "Z", farthest(solid, Point3::z));
  }

  /** Single precision keeps a metre to a tenth of a micrometre. */
  private static void assertReaches(String report, String axis, double mm) {
    assertEquals(0, number(report, "Min " + axis + " = *([-0-9.]+)"), 1e-6);
    assertEquals(mm, number(report, "Max " + axis + " = *([-0-9.]+)"), 1e-4);
  }

  private static double farthest(Solid solid, Function<Point3, Length> coordinate) {
    return solid.corners().stream().map(coordinate).reduce(Length.ZERO, Length::max).inMm();
  }

  private static double number(String report, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(report);
    assertTrue(matcher.find(), () -> pattern + " in " + report);
    return Double.parseDouble(matcher.group(1));
  }
}
