package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Pattern.Feature;
import org.slatwright.testkit.OutsideTool;
import org.slatwright.testkit.WareRack;

/** GDAL, a second independent reader, finds the same layers, areas and hole centres. */
class DxfGdalTest {

  // GDAL turns arcs into chords this fine; a polygon of them is smaller by about (step²)/6.
  private static final String ARC_STEP_DEGREES = "0.1";
  private static final double CHORDS = 1e-6;
  private static final Pattern FEATURE =
      Pattern.compile("Layer \\(String\\) = (\\w+)|LINESTRING (?:Z )?\\(([^)]*)\\)");

  @TempDir Path folder;
  private final OutsideTool gdal = OutsideTool.thatRuns("ogrinfo", "--version");

  @Test
  void layersAreasAndCentresAreThoseOfThePlan() throws IOException, InterruptedException {
    for (Written written : Written.inEveryWay(WareRack.inInches())) {
      List<String> texts = written.texts();
      for (int i = 0; i < texts.size(); i++) {
        assertRead(written.plan().patterns().get(i).features(), texts.get(i), written.mmPerUnit());
      }
    }
  }

  private void assertRead(List<Feature> features, String dxf, double unit)
      throws IOException, InterruptedException {
    List<Ring> rings = rings(dxf);
    assertEquals(
        features.stream().map(feature -> feature.operation().name()).toList(),
        rings.stream().map(Ring::layer).toList());
    for (int i = 0; i < rings.size(); i++) {
      Ring ring = rings.get(i);
      Outline outline = features.get(i).outline();
      double area = OutlineArea.mm2(outline);
      assertEquals(area, Math.abs(ring.area()) * unit * unit, area * CHORDS);
      if (outline instanceof Outline.Circle circle) {
        assertEquals(circle.centre().x().inMm(), ring.middle(0) * unit, 1e-6);
        assertEquals(circle.centre().y().inMm(), ring.middle(1) * unit, 1e-6);
      }
    }
  }

  /** The closed lines of a file. */
  private List<Ring> rings(String dxf) throws IOException, InterruptedException {
    Path file = folder.resolve("read.dxf");
    Files.writeString(file, dxf, StandardCharsets.US_ASCII);
    String printed =
        gdal.run("--config", "OGR_ARC_STEPSIZE", ARC_STEP_DEGREES, "-ro", "-al", file.toString());
    Matcher found = FEATURE.matcher(printed);
    String layer = "";
    Stream.Builder<Ring> rings = Stream.builder();
    while (found.find()) {
      if (found.group(1) != null) {
        layer = found.group(1);
      } else {
        rings.add(new Ring(layer, points(found.group(2))));
      }
    }
    return rings.build().filter(Ring::isClosed).toList();
  }

  private static List<double[]> points(String wellKnownText) {
    return Arrays.stream(wellKnownText.split(","))
        .map(point -> Arrays.stream(point.split(" ")).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  /** A line from point to point as GDAL prints it. */
  private record Ring(String layer, List<double[]> points) {

    boolean isClosed() {
      return points.size() > 2 && Arrays.equals(points.get(0), points.get(points.size() - 1));
    }

    double area() {
      double twice = 0;
      for (int i = 1; i < points.size(); i++) {
        double[] a = points.get(i - 1);
        double[] b = points.get(i);
        twice += a[0] * b[1] - b[0] * a[1];
      }
      return twice / 2;
    }

    /** Half way between the least and the greatest coordinate. */
    double middle(int axis) {
      double low = points.stream().mapToDouble(point -> point[axis]).min().orElseThrow();
      double high = points.stream().mapToDouble(point -> point[axis]).max().orElseThrow();
      return (low + high) / 2;
    }
  }
}
