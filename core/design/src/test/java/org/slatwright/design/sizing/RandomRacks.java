package org.slatwright.design.sizing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/**
 * Random rack files as text, in millimetres and in inches, of even and of oddly measured stock,
 * with every mixture of sizes given and left out.
 */
public final class RandomRacks {

  private RandomRacks() {}

  /** Well-formed files; many of them do not close. */
  public static Arbitrary<String> any() {
    return Arbitraries.of(Unit.values()).flatMap(RandomRacks::in).withoutEdgeCases();
  }

  /** Files that {@link Sizing} solves. */
  public static Arbitrary<String> solvable() {
    return any().filter(2000, RandomRacks::isSolvable);
  }

  private static Arbitrary<String> in(Unit unit) {
    Sizes sizes = new Sizes(unit);
    return Combinators.combine(
            header(sizes), timber(sizes), rack(sizes), slats(sizes), joint(sizes))
        .as(
            (header, timber, rack, slats, joint) ->
                "slatwright: 1\ntitle: Random rack\n"
                    + header
                    + group("timber", timber)
                    + group("rack", rack)
                    + group("slats", slats)
                    + group("joint", joint));
  }

  private static Arbitrary<String> header(Sizes sizes) {
    String units = "units: " + sizes.unit.symbol() + "\n";
    return Arbitraries.of(
        units,
        units,
        units + (sizes.unit == Unit.MM ? "increment: 0.5\n" : "increment: 1/32\n"),
        units + (sizes.unit == Unit.MM ? "increment: 5\n" : "increment: 1/4\n"));
  }

  private static Arbitrary<List<String>> timber(Sizes sizes) {
    return lines(
        List.of(
            Combinators.combine(sizes.section(34, 58, 34, 58), lengths(sizes))
                .as(
                    (section, lengths) ->
                        "frame: { section: " + section + lengths + ", species: norway spruce }"),
            left(
                sizes
                    .section(30, 34, 44, 90)
                    .map(section -> "rails: { section: " + section + " }")),
            Combinators.combine(sizes.section(12, 25, 38, 120), lengths(sizes))
                .as((section, lengths) -> "slats: { section: " + section + lengths + " }"),
            left(sizes.whole(6, 16).map(diameter -> "dowel: { diameter: " + diameter + " }"))));
  }

  /** Of stock, often too short for the rack. */
  private static Arbitrary<String> lengths(Sizes sizes) {
    return left(sizes.whole(400, 2600).map(length -> ", lengths: [ { length: " + length + " } ]"));
  }

  private static Arbitrary<List<String>> rack(Sizes sizes) {
    return lines(
        List.of(
            sizes.whole(300, 900).map(width -> "interior-width: " + width),
            left(Arbitraries.integers().between(1, 3).map(bays -> "bays: " + bays)),
            left(sizes.whole(160, 700).map(rail -> "rail-length: " + rail)),
            often(sizes.whole(500, 2200).map(upright -> "upright: " + upright)),
            left(sizes.whole(0, 200).map(foot -> "foot: " + foot)),
            left(openings(sizes)),
            left(
                Arbitraries.oneOf(Arbitraries.just("flush"), sizes.whole(0, 80))
                    .map(top -> "top: " + top))));
  }

  private static Arbitrary<String> openings(Sizes sizes) {
    Arbitrary<String> clear =
        Arbitraries.oneOf(sizes.whole(60, 400), sizes.whole(60, 400), Arbitraries.just("even"));
    Arbitrary<String> many =
        Combinators.combine(clear, Arbitraries.integers().between(1, 4))
            .as((height, count) -> "{ clear: " + height + ", count: " + count + " }");
    return Arbitraries.oneOf(clear, many)
        .list()
        .ofMaxSize(4)
        .map(entries -> "openings: [ " + String.join(", ", entries) + " ]");
  }

  private static Arbitrary<List<String>> slats(Sizes sizes) {
    return lines(
        List.of(
            often(Arbitraries.integers().between(1, 6).map(count -> "per-shelf: " + count)),
            left(sizes.whole(2, 30).map(gap -> "gap: " + gap)),
            left(
                Combinators.combine(sizes.whole(0, 9), sizes.whole(10, 60))
                    .as((from, to) -> "gap-range: " + from + ".." + to)),
            left(Arbitraries.of("run: through", "run: per-bay")),
            left(sizes.whole(0, 60).map(overhang -> "overhang: " + overhang))));
  }

  private static Arbitrary<List<String>> joint(Sizes sizes) {
    return lines(
        List.of(
            left(Arbitraries.of("dowels: 1", "dowels: 2")),
            left(sizes.whole(20, 60).map(depth -> "embedment: " + depth)),
            left(Arbitraries.of("fixing: { kind: brad }", "fixing: { kind: screw }"))));
  }

  /** Left out now and then. */
  private static Arbitrary<String> often(Arbitrary<String> line) {
    return Arbitraries.frequencyOf(Tuple.of(4, line), Tuple.of(1, Arbitraries.just("")));
  }

  /** Given as often as left out. */
  private static Arbitrary<String> left(Arbitrary<String> line) {
    return Arbitraries.oneOf(line, Arbitraries.just(""));
  }

  private static Arbitrary<List<String>> lines(List<Arbitrary<String>> lines) {
    return Combinators.combine(lines)
        .as(all -> all.stream().filter(line -> !line.isEmpty()).toList());
  }

  private static String group(String key, List<String> lines) {
    return lines.isEmpty() ? "" : key + ":\n  " + String.join("\n  ", lines) + "\n";
  }

  private static boolean isSolvable(String yaml) {
    try {
      Sizing.solve(
          RackFileReader.read(yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of()));
      return true;
    } catch (RackFileException e) {
      return false;
    }
  }

  /**
   * Sizes between two numbers of millimetres, written in the file's unit.
   *
   * @param unit of the file
   */
  private record Sizes(Unit unit) {

    private static final int FINEST_IN_MM = 10;
    private static final int FINEST_IN_INCH = 64;
    private static final int WHOLE_IN_INCH = 16;

    /** On the usual increment: whole millimetres, or sixteenths. */
    Arbitrary<String> whole(int fromMm, int toMm) {
      return unit == Unit.MM
          ? multiples(fromMm, toMm, Length.mm(1))
          : multiples(fromMm, toMm, Length.inches(1, WHOLE_IN_INCH));
    }

    /** As calipers read it: tenths of a millimetre, or 64ths, but often a whole size too. */
    Arbitrary<String> measured(int fromMm, int toMm) {
      Length finest =
          unit == Unit.MM ? Length.mm(1).dividedBy(FINEST_IN_MM) : Length.inches(1, FINEST_IN_INCH);
      return Arbitraries.oneOf(multiples(fromMm, toMm, finest), whole(fromMm, toMm));
    }

    Arbitrary<String> section(int first, int firstTo, int second, int secondTo) {
      return Combinators.combine(measured(first, firstTo), measured(second, secondTo))
          .as((a, b) -> a + " x " + b);
    }

    private Arbitrary<String> multiples(int fromMm, int toMm, Length step) {
      return Arbitraries.longs()
          .between(
              Length.mm(fromMm).snappedUp(step).wholeTimes(step), Length.mm(toMm).wholeTimes(step))
          .map(times -> new LengthFormat(unit).number(step.times(times)));
    }
  }
}
