package org.slatwright.design.checks;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.PointMass;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.Rack;

/**
 * How far the rack can lean before it tips: atan(x / z), the least of all ways to load it and of
 * both ways to tip.
 *
 * <p>At least 10°, as equipment is tilted by IEC 62368-1 (from a secondary source); no standard for
 * shelves names an angle. The advice holds whatever stands on which shelf: each load alone then
 * stands behind the edge by its height times tan 10°.
 */
record Slope() implements Rule {

  private static final double LEAST = 10;

  @Override
  public Stream<Finding> check(Design design) {
    Stance stance = Stance.of(design);
    Lean worst =
        Arrays.stream(Way.values())
            .map(way -> worst(stance, way))
            .min(Comparator.comparing(Lean::degrees))
            .orElseThrow();
    boolean holds = worst.degrees() >= LEAST;
    Figures figures = new Figures(design.rack().lengths());
    Measure.Compared compared = figures.angle().compare(worst.degrees(), LEAST);
    return Stream.of(
        new Finding(
            holds ? Finding.Severity.NOTE : Finding.Severity.WARNING,
            "slope",
            "rack",
            "the lean at which it tips %s, %s"
                .formatted(worst.way().words(), worst.loading().words()),
            compared.value(),
            compared.atLeast(),
            holds ? "" : advice(design.rack(), stance),
            "statics; 10° as in the stability test of IEC 62368-1, from a secondary source"));
  }

  private static Lean worst(Stance stance, Way way) {
    return stance
        .topHeavy()
        .map(loading -> new Lean(way, loading, degrees(stance, way, loading.all())))
        .min(Comparator.comparing(Lean::degrees))
        .orElseThrow();
  }

  private static double degrees(Stance stance, Way way, PointMass body) {
    return Tipping.tilt(way.lever(stance, body), body.z());
  }

  private static String advice(Rack rack, Stance stance) {
    List<Way> tooShort =
        Arrays.stream(Way.values()).filter(way -> worst(stance, way).degrees() < LEAST).toList();
    List<String> sizes =
        tooShort.stream()
            .flatMap(way -> way.atLeast(rack, missing(rack, stance, way)).stream())
            .toList();
    return StandFree.orAnchor(sizes.size() == tooShort.size() ? sizes : List.of());
  }

  private static double missing(Rack rack, Stance stance, Way way) {
    double lever =
        stance.topHeavy().mapToDouble(l -> way.lever(stance, l.all())).min().orElseThrow();
    double highest =
        Stream.concat(Stream.of(stance.empty()), stance.loads().stream())
            .mapToDouble(PointMass::z)
            .max()
            .orElseThrow();
    double wanted = highest * Math.tan(Math.toRadians(LEAST));
    return 2 * Math.max(0, wanted - lever + rack.increment().inMm());
  }

  private record Lean(Way way, Stance.Loading loading, double degrees) {}
}
