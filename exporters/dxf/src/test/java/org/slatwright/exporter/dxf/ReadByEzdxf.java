package org.slatwright.exporter.dxf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.testkit.OutsideTool;

/**
 * What ezdxf, an independent DXF library, finds in one file.
 *
 * @param lines each a kind and its values, as {@code read_dxf.py} prints them
 */
record ReadByEzdxf(List<List<String>> lines) {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final int CHORDS_A_QUARTER = 64;

  /** Reads files of those contents; all in one run, since starting Python is what takes time. */
  static List<ReadByEzdxf> read(List<String> contents, Path folder)
      throws IOException, InterruptedException {
    List<String> arguments =
        new ArrayList<>(
            List.of("-X", "utf8", OutsideTool.script(ReadByEzdxf.class, "read_dxf.py")));
    for (String dxf : contents) {
      Path file = folder.resolve(arguments.size() + ".dxf");
      arguments.add(Files.writeString(file, dxf, StandardCharsets.US_ASCII).toString());
    }
    String printed = OutsideTool.python("ezdxf").run(arguments.toArray(String[]::new));
    return Arrays.stream(printed.split("(?m)^FILE\t.*\n"))
        .skip(1)
        .map(ReadByEzdxf::parsed)
        .toList();
  }

  private static ReadByEzdxf parsed(String printed) {
    return new ReadByEzdxf(printed.lines().map(line -> List.of(line.split("\t", -1))).toList());
  }

  /** The values of every line of that kind. */
  List<List<String>> all(String kind) {
    return lines.stream()
        .filter(line -> line.get(0).equals(kind))
        .map(line -> line.subList(1, line.size()))
        .toList();
  }

  /** The values of the only line of that kind. */
  List<String> one(String kind) {
    List<List<String>> found = all(kind);
    if (found.size() != 1) {
      throw new AssertionError("expected one " + kind + ", read " + lines);
    }
    return found.get(0);
  }

  /** What closed lines of that layer enclose, arcs as fine chords. */
  List<Polygon> rings(String layer) {
    return all("RING").stream()
        .filter(ring -> ring.get(0).equals(layer))
        .map(
            ring -> {
              Coordinate[] points = points(ring);
              points[points.length - 1] = points[0].copy();
              return FACTORY.createPolygon(points);
            })
        .toList();
  }

  /** What circles of that layer enclose, as fine chords. */
  List<Geometry> discs(String layer) {
    return all("CIRCLE").stream()
        .filter(circle -> circle.get(0).equals(layer))
        .map(
            circle ->
                FACTORY
                    .createPoint(points(circle)[0])
                    .buffer(Double.parseDouble(circle.get(3)), CHORDS_A_QUARTER))
        .toList();
  }

  /** Lines that are engraved. */
  List<LineString> strokes() {
    return all("STROKE").stream().map(stroke -> FACTORY.createLineString(points(stroke))).toList();
  }

  /** The pairs of numbers that follow the layer. */
  private static Coordinate[] points(List<String> values) {
    return IntStream.range(0, (values.size() - 1) / 2)
        .mapToObj(
            i ->
                new Coordinate(
                    Double.parseDouble(values.get(2 * i + 1)),
                    Double.parseDouble(values.get(2 * i + 2))))
        .toArray(Coordinate[]::new);
  }
}
