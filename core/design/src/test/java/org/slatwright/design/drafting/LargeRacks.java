package org.slatwright.design.drafting;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Rack files of twenty shelves in six bays, which every sheet must hold on every paper. */
final class LargeRacks {

  private LargeRacks() {}

  private static final String METRIC =
      """
      slatwright: 1
      title: Bulb drying tower
      timber:
        frame: { section: 44 x 44 }
        slats: { section: 18 x 95 }
      rack: { bays: 6, interior-width: 600, rail-length: 320, foot: 100, openings: [ %s ] }
      slats: { per-shelf: 3, run: %s }
      joint: { dowels: %s }
      """;

  private static final String INCHES =
      """
      slatwright: 1
      title: Glazed ware tower
      units: in
      timber:
        frame: { section: 1 9/16 x 1 37/64 }
        slats: { section: 11/16 x 2 1/2 }
      rack: { bays: 6, interior-width: 23 5/8, rail-length: 15 3/4, openings: [ %s ] }
      slats: { per-shelf: 5, run: %s }
      joint: { dowels: %s }
      """;

  /** All shelves alike. */
  static String even(String run, int dowels) {
    return METRIC.formatted("{ clear: 70, count: 19 }", run, dowels);
  }

  /** No opening as high as another. */
  static String uneven(String run, int dowels) {
    String openings =
        IntStream.range(0, 19).mapToObj(i -> "" + (70 + i)).collect(Collectors.joining(", "));
    return METRIC.formatted(openings, run, dowels);
  }

  /** The same in inches. */
  static String inches(String run, int dowels) {
    String openings =
        IntStream.range(0, 19)
            .mapToObj(i -> "3 " + (i + 1) + "/32")
            .collect(Collectors.joining(", "));
    return INCHES.formatted(openings, run, dowels);
  }
}
