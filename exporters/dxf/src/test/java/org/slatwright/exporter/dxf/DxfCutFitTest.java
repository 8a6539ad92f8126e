package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.testkit.SamplePlans;

/**
 * Cuts a sheet by its files: what the cutter's path leaves, as ezdxf reads it, is as large as the
 * nominal plates beside it, and relieved slots take square tabs. That the nominal plates go
 * together is the jig's own test.
 */
class DxfCutFitTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Of chords beside arcs. */
  private static final double CHORDS_MM = 0.004;

  private static final String RACK =
      """
      slatwright: 1
      title: Seed-tray rack
      units: %s
      timber:
        frame: { section: 44mm x 44mm }
        slats: { section: 18mm x 95mm }
        dowel: { diameter: 10mm, rod-length: 1000mm }
      rack: { bays: 1, interior-width: 580mm, rail-length: 320mm, openings: [ 300mm ] }
      """;

  @TempDir Path folder;

  /**
   * One way of cutting.
   *
   * @param setting of the rack file
   * @param radius of the cutter, in mm
   */
  private record Way(String units, String setting, double radius, boolean relieved) {}

  static Stream<Way> ways() {
    return Stream.of(
        new Way("mm", "{process: laser, kerf: 0.15}", 0.075, false),
        new Way("mm", "{process: router, tool: 3.175}", 1.5875, false),
        new Way("mm", "{process: router, tool: 3.175, inside-corners: relieved}", 1.5875, true),
        new Way("in", "{process: router, tool: 1/8, inside-corners: relieved}", 1.5875, true));
  }

  @ParameterizedTest
  @MethodSource("ways")
  void whatIsCutIsAsLargeAsThePlates(Way way)
      throws IOException, InterruptedException, RackFileException {
    List<ReadByEzdxf> read = sheetAndPath(way);
    for (String layer : List.of("CUT_INSIDE", "CUT_OUTSIDE")) {
      List<Polygon> wanted = read.get(0).rings(layer);
      List<Polygon> paths = read.get(1).rings(layer);
      assertEquals(wanted.size(), paths.size(), layer);
      double offset = layer.equals("CUT_INSIDE") ? way.radius() : -way.radius();
      for (int i = 0; i < wanted.size(); i++) {
        Geometry cut = paths.get(i).buffer(offset, 32);
        assertSameSize(wanted.get(i), cut);
        assertCorners(wanted.get(i), cut, layer.equals("CUT_INSIDE"), way);
      }
    }
  }

  /** Measured across the middle, both ways. */
  private static void assertSameSize(Polygon wanted, Geometry cut) {
    Envelope box = wanted.getEnvelopeInternal();
    for (boolean level : List.of(true, false)) {
      assertEquals(
          across(wanted, box, level), across(cut, box, level), 2 * CHORDS_MM, wanted.toString());
    }
  }

  private static double across(Geometry area, Envelope box, boolean level) {
    Coordinate middle = box.centre();
    Coordinate from =
        level
            ? new Coordinate(box.getMinX() - 9, middle.y)
            : new Coordinate(middle.x, box.getMinY() - 9);
    Coordinate to =
        level
            ? new Coordinate(box.getMaxX() + 9, middle.y)
            : new Coordinate(middle.x, box.getMaxY() + 9);
    return FACTORY.createLineString(new Coordinate[] {from, to}).intersection(area).getLength();
  }

  /** Relieved, a slot holds the whole square and a piece nothing beyond its own; else nearly so. */
  private static void assertCorners(Polygon wanted, Geometry cut, boolean opening, Way way) {
    Geometry inTheWay = opening ? wanted.difference(cut) : cut.difference(wanted);
    double squareless = (1 - Math.PI / 4) * way.radius() * way.radius();
    double most = way.relieved() ? 0 : 8 * squareless;
    assertTrue(
        inTheWay.getArea() <= most + wanted.getLength() * CHORDS_MM,
        () -> inTheWay.getArea() + " mm2 in the way: " + wanted);
    if (way.relieved()) {
      assertTrue(
          opening ? cut.buffer(CHORDS_MM).covers(wanted) : wanted.buffer(CHORDS_MM).covers(cut),
          wanted.toString());
    }
  }

  private List<ReadByEzdxf> sheetAndPath(Way way)
      throws IOException, InterruptedException, RackFileException {
    byte[] rack = RACK.formatted(way.units()).getBytes(StandardCharsets.UTF_8);
    Plan plan =
        Planner.plan(
            RackFileReader.read(rack, "rack.yaml", List.of("shop.cutter=" + way.setting())));
    List<Pattern> sheets =
        plan.patterns().stream()
            .filter(pattern -> pattern.name().startsWith("jig/sheet-"))
            .toList();
    assertEquals(
        List.of("jig/sheet-1", "jig/sheet-1-path"), sheets.stream().map(Pattern::name).toList());
    Plan onlySheets = SamplePlans.withPatterns(plan, sheets);
    List<ReadByEzdxf> read =
        ReadByEzdxf.read(new Written(onlySheets, "R2000", "mm").texts(), folder);
    for (ReadByEzdxf file : read) {
      assertEquals(List.of(), file.all("FAULT"));
    }
    return read;
  }
}
