package org.slatwright.design.sizing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
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
 * with every mixture of sizes given and left out, and some of them with things to hold.
 */
public final class RandomRacks {

  private RandomRacks() {}

  /** Well-formed files; many of them do not close. */
  public static Arbitrary<String> any() {
    return Arbitraries.of(Unit.values())
        .flatMap(unit -> in(new Sizes(unit), Arbitraries.of(true, false)))
        .withoutEdgeCases();
  }

  /** Files that {@link Sizing} solves, of sawn stock and of dowels as long as they need be. */
  public static Arbitrary<String> solvable() {
    return Arbitraries.of(Unit.values())
        .flatMap(unit -> in(new Sizes(unit), Arbitraries.just(false)))
        .withoutEdgeCases()
        .filter(2000, RandomRacks::isSolvable);
  }

  /** Files that {@link Sizing} solves, with slats as wide and thick as boards of several widths. */
  public static Arbitrary<String> ofBoards() {
    return any().filter(2000, yaml -> yaml.contains("boards:") && isSolvable(yaml));
  }

  /** Files that {@link Sizing} solves, of racks that must hold something. */
  static Arbitrary<String> holding() {
    return any().filter(2000, yaml -> yaml.contains("holds:") && isSolvable(yaml));
  }

  /**
   * With so many things to hold.
   *
   * @param scarce whether stock may be what lies in the shop: boards, short rods, dowels bought cut
   */
  private static Arbitrary<String> in(Sizes sizes, Arbitrary<Boolean> scarce) {
    Arbitrary<Integer> things =
        Arbitraries.frequencyOf(
            Tuple.of(2, Arbitraries.just(0)), Tuple.of(3, Arbitraries.integers().between(1, 3)));
    return things.flatMap(count -> scarce.flatMap(isScarce -> holding(sizes, count, isScarce)));
  }

  /** Openings may be for the things. */
  private static Arbitrary<String> holding(Sizes sizes, int things, boolean scarce) {
    return Combinators.combine(
            header(sizes),
            holds(sizes, things),
            timber(sizes, scarce),
            rack(sizes, things),
            slats(sizes),
            joint(sizes))
        .as(
            (header, holds, timber, rack, slats, joint) ->
                "slatwright: 1\ntitle: Random rack\n"
                    + header
                    + group("holds", holds)
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

  private static Arbitrary<List<String>> holds(Sizes sizes, int things) {
    return lines(IntStream.range(0, things).mapToObj(i -> thing(sizes, "thing " + i)).toList());
  }

  /** As an entry of {@code holds}. */
  private static Arbitrary<String> thing(Sizes sizes, String name) {
    Arbitrary<Integer> few = Arbitraries.frequency(Tuple.of(3, 1), Tuple.of(1, 2), Tuple.of(1, 3));
    return Combinators.combine(
            sizes.measured(60, 450),
            sizes.measured(60, 450),
            sizes.measured(30, 200),
            Combinators.combine(few, few, few)
                .as(
                    (across, deep, high) ->
                        ", across: " + across + ", deep: " + deep + ", high: " + high),
            left(sizes.whole(0, 20).map(clearance -> ", clearance: " + clearance)),
            left(Arbitraries.just(", lie: either-way")))
        .as(
            (width, depth, height, counts, clearance, lie) ->
                "- { name: "
                    + name
                    + ", width: "
                    + width
                    + ", depth: "
                    + depth
                    + ", height: "
                    + height
                    + counts
                    + clearance
                    + lie
                    + " }");
  }

  private static Arbitrary<List<String>> timber(Sizes sizes, boolean scarce) {
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
            scarce ? Arbitraries.oneOf(sawn(sizes), reclaimed(sizes)) : sawn(sizes),
            left(dowel(sizes, scarce))));
  }

  private static Arbitrary<String> sawn(Sizes sizes) {
    return Combinators.combine(sizes.section(12, 25, 38, 120), lengths(sizes))
        .as((section, lengths) -> "slats: { section: " + section + lengths + " }");
  }

  /** Boards that are often too few or too short. */
  private static Arbitrary<String> reclaimed(Sizes sizes) {
    return Combinators.combine(
            sizes.whole(400, 2600),
            sizes.measured(38, 120),
            sizes.measured(12, 25),
            Arbitraries.integers().between(1, 20))
        .as(
            (length, width, thickness, count) ->
                "{ length: "
                    + length
                    + ", width: "
                    + width
                    + ", thickness: "
                    + thickness
                    + ", count: "
                    + count
                    + " }")
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(boards -> "slats: { boards: [ " + String.join(", ", boards) + " ] }");
  }

  private static Arbitrary<String> dowel(Sizes sizes, boolean scarce) {
    if (!scarce) {
      return sizes.whole(6, 16).map(diameter -> "dowel: { diameter: " + diameter + " }");
    }
    return Combinators.combine(
            sizes.whole(6, 16),
            Arbitraries.oneOf(
                Arbitraries.just(""),
                sizes.whole(60, 110).map(rod -> ", rod-length: " + rod),
                sizes.whole(60, 110).map(length -> ", length: " + length)))
        .as((diameter, length) -> "dowel: { diameter: " + diameter + length + " }");
  }

  /** Of stock, often too short for the rack. */
  private static Arbitrary<String> lengths(Sizes sizes) {
    return left(sizes.whole(400, 2600).map(length -> ", lengths: [ { length: " + length + " } ]"));
  }

  private static Arbitrary<List<String>> rack(Sizes sizes, int things) {
    Arbitrary<String> width = sizes.whole(300, 900).map(wide -> "interior-width: " + wide);
    return lines(
        List.of(
            things == 0 ? width : left(width),
            left(Arbitraries.integers().between(1, 3).map(bays -> "bays: " + bays)),
            left(sizes.whole(160, 700).map(rail -> "rail-length: " + rail)),
            often(sizes.whole(500, 2200).map(upright -> "upright: " + upright)),
            left(sizes.whole(0, 200).map(foot -> "foot: " + foot)),
            left(openings(sizes, things)),
            left(
                Arbitraries.oneOf(Arbitraries.just("flush"), sizes.whole(0, 80))
                    .map(top -> "top: " + top))));
  }

  private static Arbitrary<String> openings(Sizes sizes, int things) {
    Arbitrary<String> clear =
        Arbitraries.oneOf(sizes.whole(60, 400), sizes.whole(60, 400), Arbitraries.just("even"));
    Arbitrary<String> many =
        Combinators.combine(clear, Arbitraries.integers().between(1, 4))
            .as((height, count) -> "{ clear: " + height + ", count: " + count + " }");
    Arbitrary<String> named =
        Combinators.combine(
                Arbitraries.integers().between(0, Math.max(0, things - 1)),
                Arbitraries.integers().between(1, 2))
            .as((thing, count) -> "{ for: thing " + thing + ", count: " + count + " }");
    return (things == 0 ? Arbitraries.oneOf(clear, many) : Arbitraries.oneOf(clear, many, named))
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

  /** Whether {@link Sizing} solves that file. */
  public static boolean isSolvable(String yaml) {
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
