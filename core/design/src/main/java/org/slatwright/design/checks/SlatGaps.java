package org.slatwright.design.checks;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.Moisture;
import org.slatwright.design.sizing.Fitting;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Rack.SlatRow;
import org.slatwright.design.sizing.ShelfRow;
import org.slatwright.design.sizing.Spelling;

/**
 * Whether the gaps of a shelf stay open when its slats swell. Slats are taken as flat-sawn, which
 * swells most ({@link Moisture#change} with the tangential coefficient), as wide as planned when
 * built at the middle of the year's moisture, and each held by its fixings about its own middle. A
 * slat that reaches the upright is pushed into its gap. The rails under them run along the grain
 * and keep their length.
 */
final class SlatGaps implements Rule {

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    double left = left(rack);
    boolean open = left > 0;
    Figures figures = new Figures(rack.lengths());
    String what = most(rack) == 1 ? "the slat to the uprights" : "the slats";
    return Stream.of(
        new Finding(
            open ? Finding.Severity.NOTE : Finding.Severity.WARNING,
            "slat-gaps",
            "slats.gap",
            "least gap between %s at the dampest of the year, %s %% moisture %s, if built at %s %%"
                .formatted(
                    what,
                    figures.number(rack.climate().dampest()),
                    rack.climate().word(),
                    figures.number(rack.climate().usual())),
            open ? figures.distance(left) : "none: they press by " + figures.distance(-left),
            "more than 0",
            open ? "" : advice(rack),
            "Wood Handbook, chapter 13"));
  }

  private static double left(Rack rack) {
    return rack.rows().stream().mapToDouble(row -> left(rack, row)).min().orElseThrow();
  }

  /** The least gap left, in mm; with one slat the room to both uprights; negative when pressed. */
  private static double left(Rack rack, ShelfRow row) {
    double[] swelling =
        row.slats().stream().mapToDouble(slat -> swelling(rack, slat.width())).toArray();
    int last = swelling.length - 1;
    if (last == 0) {
      return row.frontMargin().plus(row.backMargin()).inMm() - swelling[0];
    }
    double front = push(row.frontMargin(), swelling[0]);
    double back = push(row.backMargin(), swelling[last]);
    return IntStream.range(0, last)
        .mapToDouble(
            i ->
                row.gap().inMm()
                    - (swelling[i] + swelling[i + 1]) / 2
                    - ((i == 0 ? front : 0) + (i == last - 1 ? back : 0)))
        .min()
        .orElseThrow();
  }

  /** How far an end slat is moved by the upright. */
  private static double push(Length margin, double swelling) {
    return Math.max(0, swelling / 2 - margin.inMm());
  }

  private static double swelling(Rack rack, Length width) {
    return Moisture.change(
        width.inMm(),
        rack.slatTimber().species().tangential(),
        rack.climate().usual(),
        rack.climate().dampest());
  }

  /** Slats on the fullest shelf. */
  private static int most(Rack rack) {
    return rack.rows().stream().mapToInt(row -> row.slats().size()).max().orElseThrow();
  }

  /** Enough for any margin, since a wider gap takes from it. */
  private static String advice(Rack rack) {
    Spelling spelling = new Spelling(rack.units());
    SlatRow row = rack.slats();
    if (most(rack) == 1) {
      return loneAdvice(rack, spelling);
    }
    Length enough = justAbove(rack, 2 * swelling(rack, row.width()));
    Length gap =
        row.gapRange()
            .map(range -> Length.max(enough, range.from().snappedUp(rack.increment())))
            .orElse(enough);
    long fitting = Fitting.pieces(rack.rail().length(), row.width(), gap);
    String range =
        row.gapRange()
            .filter(given -> gap.isMoreThan(given.to()))
            .map(given -> " with slats.gap-range=" + spelling.pair(given.from(), "..", gap))
            .orElse("");
    return "set slats.gap=%s%s with slats.per-shelf=%s"
        .formatted(spelling.length(gap), range, Math.min(most(rack), fitting));
  }

  /** Longer rails would have a reclaimed board ripped wider. */
  private static String loneAdvice(Rack rack, Spelling spelling) {
    Length rail = rack.rail().length();
    Length width = rack.slats().width();
    if (rack.boardChoice().isEmpty()) {
      Length longer = width.plus(justAbove(rack, swelling(rack, width)));
      return "set rack.rail-length=" + spelling.length(longer);
    }
    Length narrower = rail.minus(justAbove(rack, swelling(rack, rail)));
    return "rip the slat no wider than "
        + rack.lengths().withUnit(narrower)
        + ", so that it has room to swell";
  }

  private static Length justAbove(Rack rack, double mm) {
    Length nearest = Length.roundedMm(mm);
    return nearest.plus(new Length(1)).snappedUp(rack.increment());
  }
}
