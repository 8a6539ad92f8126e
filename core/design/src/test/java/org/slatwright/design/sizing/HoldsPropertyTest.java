package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Held;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** What holds for every rack that must hold something; needs are reckoned here anew. */
class HoldsPropertyTest {

  @Property(tries = 60)
  void aSolvedWidthTakesEveryThingAndNoneIsSpare(@ForAll("holding") String yaml) throws Exception {
    RackFile file = read(yaml);
    if (file.rack().interiorWidth().isPresent()) {
      return;
    }
    Rack rack = Sizing.solve(file);

    Length smaller = rack.interiorWidth().minus(rack.increment());

    assertTrue(needs(file, rack, this::across).noneMatch(rack.interiorWidth()::isLessThan));
    assertTrue(needs(file, rack, this::across).anyMatch(smaller::isLessThan));
  }

  @Property(tries = 60)
  void solvedRailsTakeEveryThingAndTheNextShorterOnesWouldNotDo(@ForAll("holding") String yaml)
      throws Exception {
    RackFile file = read(yaml);
    if (file.rack().railLength().isPresent() || file.slats().perShelf().isPresent()) {
      return;
    }
    Rack rack = Sizing.solve(file);

    Length smaller = rack.rail().length().minus(rack.increment());

    assertTrue(needs(file, rack, this::deep).noneMatch(rack.rail().length()::isLessThan));
    assertTrue(
        needs(file, rack, this::deep).anyMatch(smaller::isLessThan)
            || !closes(file, "rack.rail-length=" + smaller.inMm() + " mm"));
  }

  @Property(tries = 60)
  void anOpeningForAThingTakesItAndNothingIsSpare(@ForAll("holding") String yaml) throws Exception {
    RackFile file = read(yaml);
    Rack rack = Sizing.solve(file);
    if (file.rack().openings().isEmpty()) {
      return;
    }
    List<RackFile.Clear> clears =
        file.rack().openings().get().value().stream()
            .flatMap(
                opening -> Collections.nCopies(opening.count(), opening.clear().value()).stream())
            .toList();
    for (int i = 0; i < clears.size(); i++) {
      if (clears.get(i) instanceof RackFile.Clear.For named) {
        assertLeast(rack, above(named.thing()), rack.openings().get(i));
      }
    }
  }

  @Property(tries = 60)
  void openingsLeftOutTakeEveryThing(@ForAll("holding") String yaml) throws Exception {
    RackFile file = read(yaml);
    Rack rack = Sizing.solve(file);
    if (file.rack().openings().isPresent()) {
      return;
    }
    List<Length> needs = file.holds().stream().map(this::above).toList();
    if (file.rack().upright().isEmpty()) {
      assertEquals(needs.size(), rack.openings().size());
      IntStream.range(0, needs.size())
          .forEach(i -> assertLeast(rack, needs.get(i), rack.openings().get(i)));
      return;
    }
    Length highest = needs.stream().reduce(Length.ZERO, Length::max);
    boolean taken = rack.openings().stream().noneMatch(highest::isMoreThan);
    assertTrue(taken || rack.openings().size() == 1);
    String oneMore = "rack.openings=[{clear: even, count: " + (rack.openings().size() + 1) + "}]";
    assertTrue(
        !closes(file, oneMore)
            || Sizing.solve(file.with(oneMore)).openings().stream().anyMatch(highest::isMoreThan));
  }

  @Property(tries = 60)
  void oneThingMoreNeverNeedsLess(
      @ForAll("holding") String yaml,
      @ForAll @IntRange(min = 60, max = 600) int width,
      @ForAll @IntRange(min = 60, max = 600) int depth,
      @ForAll @IntRange(min = 60, max = 400) int height)
      throws Exception {
    RackFile file = read(yaml);
    String more =
        "holds[%s]={name: more, width: %s mm, depth: %s mm, height: %s mm}"
            .formatted(file.holds().size(), width, depth, height);
    if (!closes(file, more)) {
      return;
    }
    Rack rack = Sizing.solve(file);
    Rack with = Sizing.solve(file.with(more));

    assertFalse(with.interiorWidth().isLessThan(rack.interiorWidth()));
    assertFalse(with.rail().length().isLessThan(rack.rail().length()));
    assertFalse(with.upright().length().isLessThan(rack.upright().length()));
  }

  @Property(tries = 60)
  void fitsAreTheMostThatThereIsRoomFor(@ForAll("holding") String yaml) throws Exception {
    RackFile file = read(yaml);
    Rack rack = Sizing.solve(file);

    assertEquals(file.holds().size() * rack.shelves(), rack.fits().size());
    for (Fit fit : rack.fits()) {
      Held held = held(file, fit.thing());
      Length along = fit.turned() ? held.depth() : held.width();
      Length back = fit.turned() ? held.width() : held.depth();
      assertMost(fit.across(), fit.spareAcross(), along.plus(held.clearance()));
      assertMost(fit.deep(), fit.spareDeep(), back.plus(held.clearance()));
      fit.high().ifPresent(high -> assertMost(high, fit.spareAbove().get(), held.height()));
      assertEquals(fit.shelf() == rack.shelves(), fit.high().isEmpty());
      assertEquals(
          fit.across() >= held.across()
              && fit.deep() >= held.deep()
              && fit.high().orElse(held.high()) >= held.high(),
          fit.enough());
    }
  }

  @Property(tries = 60)
  void whatIsAdvisedLetsTheThingIn(@ForAll("holding") String yaml) throws Exception {
    RackFile file = read(yaml);
    for (Finding finding : misfits(Sizing.solve(file))) {
      if (finding.advice().startsWith("set ")) {
        assertTrue(
            misfits(Sizing.solve(file.with(finding.advice().substring("set ".length())))).stream()
                .noneMatch(
                    left ->
                        left.subject().equals(finding.subject()) && way(left).equals(way(finding))),
            () -> finding + " after its advice");
      }
    }
  }

  /** The inch is 25.4 mm by the International Yard and Pound Agreement of 1959. */
  @Property(tries = 60)
  void unitsChangeNothing(@ForAll("multiplesOfAnInch") List<Integer> inches) throws Exception {
    Rack metric = Sizing.solve(read(inUnits(Unit.MM, inches)));
    Rack inch = Sizing.solve(read(inUnits(Unit.INCH, inches)));

    assertEquals(metric.interiorWidth(), inch.interiorWidth());
    assertEquals(metric.rail(), inch.rail());
    assertEquals(metric.slats(), inch.slats());
    assertEquals(metric.upright(), inch.upright());
    assertEquals(metric.openings(), inch.openings());
    assertEquals(metric.fits(), inch.fits());
  }

  @Provide
  Arbitrary<String> holding() {
    return RandomRacks.holding();
  }

  @Provide
  Arbitrary<List<Integer>> multiplesOfAnInch() {
    Arbitrary<Integer> size = Arbitraries.integers().between(8, 80);
    return Combinators.combine(size, size, size, Arbitraries.integers().between(0, 8)).as(List::of);
  }

  /** Sizes in eighths of an inch. */
  private static String inUnits(Unit unit, List<Integer> eighths) {
    Function<Integer, String> length =
        size -> new LengthFormat(unit).number(Length.inches(1, 8).times(size));
    return """
        slatwright: 1
        title: Either unit
        units: %s
        increment: %s
        holds:
          - { name: pot, width: %s, depth: %s, height: %s, clearance: %s, across: 2, deep: 2, high: 2 }
        timber:
          frame: { section: %s x %s, species: norway spruce }
          slats: { section: %s x %s }
          dowel: { diameter: %s }
        rack: { foot: %s }
        slats: { gap-range: %s..%s }
        joint: { embedment: %s, fixing: { length: %s, diameter: %s } }
        """
        .formatted(
            unit.symbol(),
            length.apply(1),
            length.apply(eighths.get(0)),
            length.apply(eighths.get(1)),
            length.apply(eighths.get(2)),
            length.apply(eighths.get(3)),
            length.apply(14),
            length.apply(14),
            length.apply(6),
            length.apply(28),
            length.apply(3),
            length.apply(32),
            length.apply(1),
            length.apply(6),
            length.apply(10),
            length.apply(12),
            "1.5 mm");
  }

  private static List<Finding> misfits(Rack rack) {
    return rack.notes().stream().filter(finding -> finding.rule().equals("holds")).toList();
  }

  /** Which way it does not go in: the message without its number. */
  private static String way(Finding finding) {
    return finding.message().substring(finding.message().indexOf(" too "));
  }

  private Stream<Length> needs(RackFile file, Rack rack, BiFunction<Held, Boolean, Length> need) {
    return file.holds().stream().map(held -> need.apply(held, turned(rack, held)));
  }

  private static boolean turned(Rack rack, Held held) {
    return rack.fits().stream().anyMatch(fit -> fit.thing().equals(held.name()) && fit.turned());
  }

  private Length across(Held held, boolean turned) {
    Length one = turned ? held.depth() : held.width();
    return one.times(held.across()).plus(held.clearance().times(held.across() + 1L));
  }

  private Length deep(Held held, boolean turned) {
    Length one = turned ? held.width() : held.depth();
    return one.times(held.deep()).plus(held.clearance().times(held.deep() + 1L));
  }

  private Length above(Held held) {
    return held.height().times(held.high()).plus(held.clearance());
  }

  private static Held held(RackFile file, String name) {
    return file.holds().stream().filter(held -> held.name().equals(name)).findFirst().orElseThrow();
  }

  private static void assertLeast(Rack rack, Length need, Length size) {
    assertFalse(size.isLessThan(need));
    assertTrue(size.minus(rack.increment()).isLessThan(need));
  }

  /** What is spare is too little for one more; where there is none, one lacks it. */
  private static void assertMost(int count, Length spare, Length each) {
    if (count == 0) {
      assertTrue(spare.isNegative());
    } else {
      assertFalse(spare.isNegative());
      assertTrue(spare.isLessThan(each));
    }
  }

  private static boolean closes(RackFile file, String setting) {
    try {
      Sizing.solve(file.with(setting));
      return true;
    } catch (RackFileException e) {
      return false;
    }
  }

  private static RackFile read(String yaml) throws RackFileException {
    return RackFileReader.read(yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of());
  }
}
