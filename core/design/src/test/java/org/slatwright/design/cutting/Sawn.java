package org.slatwright.design.cutting;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.takeoff.TakeOff;

/** A rack file, the rack that it asks for, and how that is cut. */
public record Sawn(String yaml, Rack rack, Assembly assembly, CutRack cut) {

  public static Sawn of(String yaml, String... settings) {
    return of(yaml, List.of(settings));
  }

  private static Sawn of(String yaml, List<String> settings) {
    try {
      byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
      Rack rack = Sizing.solve(RackFileReader.read(bytes, "rack.yaml", settings));
      Assembly assembly = Framing.frame(rack);
      return new Sawn(
          yaml + settings,
          rack,
          assembly,
          Cutting.plan(rack, assembly, TakeOff.of(assembly, rack)));
    } catch (RackFileException e) {
      throw new AssertionError(yaml + settings + e.problems(), e);
    }
  }

  /** Random racks of stock that is bought, owned, both, or too little. */
  public static Arbitrary<Sawn> any() {
    return onSomePaper(RandomRacks.solvable())
        .flatMap(
            yaml -> {
              Sawn uncut = of(yaml);
              return Combinators.combine(
                      lengths("timber.frame", uncut, uncut.rack.upright().length()),
                      lengths("timber.slats", uncut, longestSlat(uncut.rack)),
                      boards(uncut))
                  .as(
                      (frame, slats, boards) ->
                          of(
                              yaml,
                              List.of(frame, slats, boards).stream()
                                  .filter(setting -> !setting.isEmpty())
                                  .toList()));
            });
  }

  /** Racks whose slats are as wide as their reclaimed boards. */
  public static Arbitrary<Sawn> ragged() {
    return onSomePaper(
            RandomRacks.any()
                .filter(2000, yaml -> yaml.contains("slats: { boards") && isSolvable(yaml)))
        .map(yaml -> of(yaml));
  }

  private static Arbitrary<String> onSomePaper(Arbitrary<String> racks) {
    return Combinators.combine(racks, Arbitraries.of(Paper.values()))
        .as((yaml, paper) -> yaml + "shop: { paper: " + paper.word() + " }\n");
  }

  private static boolean isSolvable(String yaml) {
    try {
      byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
      Sizing.solve(RackFileReader.read(bytes, "rack.yaml", List.of()));
      return true;
    } catch (RackFileException e) {
      return false;
    }
  }

  private static Length longestSlat(Rack rack) {
    return rack.slats().lengths().stream().reduce(Length::max).orElseThrow();
  }

  /** One to three lengths, each long enough for the longest part. */
  private static Arbitrary<String> lengths(String key, Sawn uncut, Length longest) {
    Length least =
        Length.max(longest, uncut.rack.rail().length())
            .plus(uncut.rack.supplies().endTrim().times(2))
            .snappedUp(uncut.rack.increment());
    Arbitrary<String> one =
        Combinators.combine(
                Arbitraries.integers().between(0, 40),
                Arbitraries.of("", ", price: 4.40", ", price: 0.1234", ", price: 12"),
                Arbitraries.of("", "", ", on-hand: 1", ", on-hand: 3", ", on-hand: 9"))
            .as(
                (more, price, onHand) ->
                    "{ length: "
                        + new LengthFormat(uncut.rack.units())
                            .number(least.plus(uncut.rack.increment().times(more * 37L)))
                        + price
                        + onHand
                        + " }");
    return one.list()
        .ofMinSize(1)
        .ofMaxSize(3)
        .map(entries -> key + ".lengths=[" + String.join(", ", entries) + "]");
  }

  private static Arbitrary<String> boards(Sawn uncut) {
    LengthFormat format = new LengthFormat(uncut.rack.units());
    Length width = uncut.rack.slats().width();
    Length long2 = longestSlat(uncut.rack).plus(uncut.rack.supplies().endTrim().times(2));
    Length bad = uncut.rack.increment().times(30);
    return Arbitraries.of("", "on")
        .flatMap(
            on ->
                on.isEmpty()
                    ? Arbitraries.just("")
                    : Combinators.combine(
                            Arbitraries.integers().between(1, 3),
                            Arbitraries.integers().between(1, 4),
                            Arbitraries.of(true, false))
                        .as(
                            (strips, count, avoid) ->
                                "timber.slats.boards=[{ length: "
                                    + format.number(long2.times(2).plus(bad.times(2)))
                                    + ", width: "
                                    + format.number(width.times(strips).plus(bad))
                                    + ", thickness: "
                                    + format.number(uncut.rack.slats().thickness())
                                    + ", count: "
                                    + count
                                    + (avoid
                                        ? ", avoid: [ "
                                            + format.number(long2)
                                            + ".."
                                            + format.number(long2.plus(bad))
                                            + " ]"
                                        : "")
                                    + " }]"));
  }

  public CuttingPlan plan() {
    return cut.plan();
  }

  TimberCuts timber(Stock stock) {
    return plan().timbers().stream()
        .filter(timber -> timber.stock() == stock)
        .findFirst()
        .orElseThrow();
  }

  SparePiece spare(String name) {
    return plan().spares().stream()
        .filter(spare -> spare.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The buying list, a line each: {@code 2 × norway spruce, … of 2400 mm at 5.90}. */
  List<String> buying() {
    return plan().buying().stream().map(Sawn::spell).toList();
  }

  private static String spell(Purchase line) {
    return line.quantity().map(count -> count + " × ").orElse("")
        + line.what()
        + line.length().map(length -> " of " + length).orElse("")
        + line.price().map(price -> " at " + price.toPlainString()).orElse("")
        + line.cost().map(cost -> " = " + cost.toPlainString()).orElse("");
  }

  /** Boards, a line each: {@code F1 F2: U U R +rest}. */
  List<String> boards(Stock stock) {
    return timber(stock).boards().stream()
        .map(
            board ->
                String.join(" ", board.marks())
                    + ": "
                    + board.cuts().stream()
                        .map(CutBoard.Cut::mark)
                        .collect(Collectors.joining(" ")))
        .toList();
  }

  List<String> findings() {
    return cut.findings().stream().map(Sawn::spell).toList();
  }

  private static String spell(Finding finding) {
    return finding.subject() + ": " + finding.message() + "; " + finding.advice();
  }

  /** What a failing property shows. */
  @Override
  public String toString() {
    return yaml;
  }
}
