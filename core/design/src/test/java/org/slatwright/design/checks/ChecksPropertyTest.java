package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.wood.Climate;

/** What holds for every rule and every rack. */
class ChecksPropertyTest {

  /** What a finding is about. */
  private record About(String rule, String subject) {
    static About of(Finding finding) {
      return new About(finding.rule(), finding.subject());
    }
  }

  @Property(tries = 150)
  void aHeavierLoadNeverMakesAFindingMilder(
      @ForAll("racks") String yaml,
      @ForAll @IntRange(min = 1, max = 200) int load,
      @ForAll @IntRange(min = 1, max = 2000) int more)
      throws Exception {
    Map<About, Severity> light = severities(checked(yaml, kilograms(load)));
    Map<About, Severity> heavy = severities(checked(yaml, kilograms(load + more)));

    light.forEach(
        (about, severity) ->
            assertTrue(
                heavy.containsKey(about) && heavy.get(about).compareTo(severity) <= 0,
                () -> about + ": " + severity + ", and under more " + heavy.get(about)));
  }

  @Property(tries = 150)
  void theSameRackInTheOtherUnitIsFoundJustAsBad(
      @ForAll("racks") String yaml, @ForAll @IntRange(min = 1, max = 200) int load)
      throws Exception {
    Rack rack = Designs.of(yaml, kilograms(load)).rack();
    Optional<Design> metric = solved(RackText.of(rack, Unit.MM));
    Optional<Design> inch = solved(RackText.of(rack, Unit.INCH));
    Assume.that(metric.isPresent() && inch.isPresent());
    assertEquals(metric.get().rack().slats(), inch.get().rack().slats());
    assertEquals(metric.get().rack().joint().embedment(), inch.get().rack().joint().embedment());

    assertEquals(severities(Checks.of(metric.get())), severities(Checks.of(inch.get())));
  }

  @Property(tries = 150)
  void everyFindingSaysWhatItIsAboutAndOnce(
      @ForAll("racks") String yaml, @ForAll @IntRange(min = 1, max = 1000) int load)
      throws Exception {
    List<Finding> findings = checked(yaml, kilograms(load));

    for (Finding finding : findings) {
      assertTrue(finding.rule().matches("[a-z]+(-[a-z]+)*"), finding::toString);
      assertFalse(finding.subject().isBlank(), finding::toString);
      assertFalse(finding.message().isBlank(), finding::toString);
      assertFalse(
          finding.severity() != Severity.NOTE && finding.source().isBlank(), finding::toString);
    }
    assertEquals(
        findings.size(), findings.stream().map(About::of).distinct().count(), findings::toString);
  }

  /**
   * A change may ask for a rack that does not close, where other sizes are given too; then the
   * reader says so. One that closes clears the finding, or the rule would send the maker in
   * circles.
   */
  @Property(tries = 150)
  void aChangeThatIsAdvisedClearsTheFinding(
      @ForAll("racks") String yaml, @ForAll @IntRange(min = 1, max = 600) int load)
      throws Exception {
    List<String> settings = List.of(kilograms(load));
    for (Finding finding : checked(yaml, kilograms(load))) {
      if (finding.severity() != Severity.NOTE) {
        for (List<String> change : Advice.changes(finding)) {
          Optional<Design> changed = solved(yaml, Advice.joined(settings, change));
          assertFalse(
              changed.isPresent() && isStillFound(finding, changed.get()),
              () -> change + " does not clear " + finding);
        }
      }
    }
  }

  @Property(tries = 100)
  void aThickerSlatNeverSagsMore(
      @ForAll("racks") String yaml,
      @ForAll @IntRange(min = 1, max = 200) int load,
      @ForAll @IntRange(min = 1, max = 100) int thicker)
      throws Exception {
    SlatCase thin = SlatCase.of(Designs.of(yaml, kilograms(load)).rack());
    SlatCase thick = thin.withThickness(thin.thickness().plus(Length.mm(thicker)));

    assertTrue(thick.sag() <= thin.sag());
    assertTrue(thick.tipSag() <= thin.tipSag());
    assertTrue(thick.strength().value() <= thin.strength().value());
  }

  @Provide
  Arbitrary<String> racks() {
    return Combinators.combine(RandomRacks.solvable(), Arbitraries.of(Climate.values()))
        .as((yaml, climate) -> yaml + "load: { climate: " + climate.word() + " }\n");
  }

  private static List<Finding> checked(String yaml, String setting) throws RackFileException {
    return Checks.of(Designs.of(yaml, setting));
  }

  private static boolean isStillFound(Finding finding, Design design) {
    return Checks.of(design).stream()
        .filter(found -> About.of(found).equals(About.of(finding)))
        .anyMatch(found -> found.severity() != Severity.NOTE);
  }

  private static Map<About, Severity> severities(List<Finding> findings) {
    return findings.stream().collect(Collectors.toMap(About::of, Finding::severity));
  }

  private static Optional<Design> solved(String yaml, List<String> settings) {
    try {
      return Optional.of(Designs.of(yaml, settings));
    } catch (RackFileException e) {
      return Optional.empty();
    }
  }

  private static Optional<Design> solved(String yaml) {
    return solved(yaml, List.of());
  }

  private static String kilograms(int load) {
    return "load.per-shelf=" + load + "kg";
  }
}
