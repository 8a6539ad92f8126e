package org.slatwright.design.machining;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.InsideCorners;
import org.slatwright.design.outline.Narrowest;
import org.slatwright.design.outline.Side;
import org.slatwright.design.sizing.Rack.Cutter;
import org.slatwright.design.sizing.Spelling;

/** Says where a cutter cannot follow the outlines of a jig's plates. */
record CutterLimits(CutterPath path, Unit units) {

  private static final String RULE = "jig-cutter";
  private static final String SOURCE = "geometry";

  List<Finding> on(Jig jig) {
    return Stream.concat(
            jig.plates().stream().flatMap(plate -> jams(plate).stream()), corners(jig).stream())
        .toList();
  }

  private Optional<Finding> jams(Plate plate) {
    return outlines(plate, Narrowest::of)
        .min(Comparator.naturalOrder())
        .filter(narrowest -> narrowest.compareTo(diameter()) <= 0)
        .map(
            narrowest ->
                new Finding(
                    Finding.Severity.WARNING,
                    RULE,
                    "plate " + plate.mark() + " " + plate.name(),
                    "the cutter cannot get into a slot or notch, which is left out of its path:"
                        + " diameter",
                    show(diameter()),
                    "less than " + show(narrowest),
                    thinner(narrowest),
                    SOURCE));
  }

  /** Rounded down to a size that bits are sold in. */
  private String thinner(Length narrowest) {
    Length step = units.metricOrInch(Length.mm(1).half(), Length.inches(1, 32));
    Length thinner = narrowest.minus(new Length(1)).snappedDown(step);
    String key = path.cutter() instanceof Cutter.Router ? "shop.cutter.tool" : "shop.cutter.kerf";
    return thinner.isPositive()
        ? "set " + key + "=" + new Spelling(units).length(thinner)
        : "cut those by hand";
  }

  private Optional<Finding> corners(Jig jig) {
    if (!(path.cutter() instanceof Cutter.Router)) {
      return Optional.empty();
    }
    int round =
        jig.plates().stream()
            .mapToInt(
                plate -> plate.quantity() * outlines(plate, this::left).mapToInt(i -> i).sum())
            .sum();
    return round == 0 ? Optional.empty() : Optional.of(rounded(round));
  }

  private Finding rounded(int corners) {
    String squareThem = "square them with a chisel or a file, or the plates do not go home";
    return new Finding(
        Finding.Severity.NOTE,
        RULE,
        "drilling jig",
        (corners == 1 ? "1 inside corner stays" : corners + " inside corners stay")
            + (path.isRelieved() ? " round, too close to others to be relieved" : " round")
            + ": radius",
        show(path.cutter().offset()),
        "",
        path.isRelieved()
            ? squareThem
            : "set shop.cutter.inside-corners=relieved, or " + squareThem,
        SOURCE);
  }

  private int left(Outline.Path outline, Side side) {
    return InsideCorners.count(path.wanted(outline, side), side);
  }

  private static <T> Stream<T> outlines(Plate plate, BiFunction<Outline.Path, Side, T> each) {
    return Stream.concat(
        plate.openings().stream()
            .filter(Outline.Path.class::isInstance)
            .map(opening -> each.apply((Outline.Path) opening, Side.INSIDE)),
        Stream.of(each.apply(plate.boundary(), Side.OUTSIDE)));
  }

  private Length diameter() {
    return path.cutter().offset().times(2);
  }

  private String show(Length length) {
    return new LengthFormat(units).withUnit(length);
  }
}
