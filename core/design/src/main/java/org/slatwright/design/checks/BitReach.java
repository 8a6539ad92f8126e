package org.slatwright.design.checks;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Spelling;

/**
 * Whether the dowel bit reaches the bottom of its hole: through the guide of the jig, the upright
 * and into the rail. A bit that is too short only with the jig in front of it can finish the hole
 * with the jig taken off, less surely straight.
 *
 * <p>Where nothing says how far the bit reaches, the flutes of a jobber twist drill are taken: past
 * them chips have nowhere to go. Flute lengths of DIN 338 (mm) and ASME B94.11M (inches), from
 * memory; other diameters are not guessed at.
 */
final class BitReach implements Rule {

  private static final String SOURCE = "common practice, no source";
  private static final String FLUTE_SOURCE =
      "flute lengths of jobber drills: DIN 338, ASME B94.11M (from memory)";

  private static final Map<Length, Length> JOBBER_FLUTES =
      new TreeMap<>(
          Map.of(
              Length.mm(6), Length.mm(57),
              Length.mm(8), Length.mm(75),
              Length.mm(10), Length.mm(87),
              Length.mm(12), Length.mm(101),
              Length.inches(1, 4), Length.inches(11, 4),
              Length.inches(5, 16), Length.inches(51, 16),
              Length.inches(3, 8), Length.inches(29, 8),
              Length.inches(7, 16), Length.inches(65, 16),
              Length.inches(1, 2), Length.inches(9, 2)));

  @Override
  public Stream<Finding> check(Design design) {
    return Stream.of(new Reach(design).finding());
  }

  /** The flutes of a usual bit of exactly that diameter. */
  static Optional<Length> jobberFlute(Length diameter) {
    return Optional.ofNullable(JOBBER_FLUTES.get(diameter));
  }

  private record Reach(Design design, Figures figures, Length inWood, Length throughJig) {

    Reach(Design design) {
      this(design, new Figures(design.rack().lengths()), inWood(design), throughJig(design));
    }

    private static Length inWood(Design design) {
      return design.rack().upright().depth().plus(design.rack().joint().holeDepth());
    }

    private static Length throughJig(Design design) {
      return inWood(design).plus(design.jig().map(Jig::guideDepth).orElse(Length.ZERO));
    }

    Finding finding() {
      return design.rack().shop().bitReach().map(this::ofGiven).orElseGet(this::ofUsual);
    }

    private Finding ofGiven(Length reach) {
      if (reach.isLessThan(inWood)) {
        return finding(
            Severity.ERROR, "the bit does not reach the bottom of the dowel hole", reach, longer());
      }
      return reach.isLessThan(throughJig)
          ? finding(
              Severity.WARNING,
              "the bit reaches the bottom of the dowel hole only with the jig taken off",
              reach,
              longer() + ", or drill the last " + show(throughJig.minus(reach)) + " without jig")
          : finding(Severity.NOTE, "the bit reaches the bottom of the dowel hole", reach, "");
    }

    private Finding ofUsual() {
      Optional<Length> flute = jobberFlute(design.rack().joint().diameter());
      String bit = "a bit of " + show(design.rack().joint().diameter());
      if (flute.isEmpty()) {
        return new Finding(
            Severity.NOTE,
            "bit-reach",
            "dowel bit",
            bit + " must reach this far" + way(),
            "",
            atLeast(),
            "measure yours and give shop.bit-reach",
            SOURCE);
      }
      boolean reaches = !flute.get().isLessThan(throughJig);
      return new Finding(
          Severity.NOTE,
          "bit-reach",
          "dowel bit",
          reaches
              ? "the flutes of " + bit + " of the usual length reach" + way()
              : "the flutes of " + bit + " of the usual length are too short to reach" + way(),
          show(flute.get()),
          atLeast(),
          reaches ? "" : longer(),
          FLUTE_SOURCE);
    }

    /** What it goes through, in words. */
    private String way() {
      return (design.jig().isPresent() ? " through jig and upright" : " through the upright")
          + " into the rail";
    }

    private Finding finding(Severity severity, String message, Length reach, String advice) {
      return new Finding(
          severity, "bit-reach", "dowel bit", message, show(reach), atLeast(), advice, SOURCE);
    }

    private String longer() {
      Length enough = throughJig.snappedUp(design.rack().increment());
      return "take a longer bit and set shop.bit-reach="
          + new Spelling(design.rack().units()).length(enough);
    }

    private String atLeast() {
      return "at least " + show(throughJig);
    }

    private String show(Length length) {
      return figures.length(length);
    }
  }
}
