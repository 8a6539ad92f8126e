package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.sizing.DowelSizes;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Spelling;

/** What sizing chooses by itself is well by the rules. */
class DefaultDowelPropertyTest {

  /**
   * 1.5 diameters to an edge and 3 to the next dowel: common practice, no source. To the foot and
   * the top of an upright only where any usual dowel leaves enough wood there.
   */
  @Property(tries = 100)
  void aDowelThatIsLeftOutNeverWarns(@ForAll("withoutDowel") String yaml) throws Exception {
    Optional<Design> design = solved(yaml);
    Assume.that(design.isPresent());

    assertFalse(warns(design.get(), "dowel-diameter"));
    if (warns(design.get(), "dowel-edges")) {
      assertTrue(isByTheEnds(design.get()));
      assertFalse(isWellWithAnyUsual(yaml, design.get()));
    }
  }

  @Provide
  Arbitrary<String> withoutDowel() {
    return RandomRacks.solvable().map(yaml -> yaml.replaceAll("\n  dowel: \\{[^}]*}", ""));
  }

  private static boolean isByTheEnds(Design design) {
    String scarcest = DowelWood.scarcest(design.assembly()).orElseThrow().name();
    return scarcest.endsWith("to the foot") || scarcest.endsWith("to the top");
  }

  private static boolean isWellWithAnyUsual(String yaml, Design design) {
    Spelling spelling = new Spelling(design.rack().units());
    return DowelSizes.ofTheTrade(design.rack().units()).stream()
        .map((Length size) -> "timber.dowel.diameter=" + spelling.length(size))
        .flatMap(setting -> solved(yaml, setting).stream())
        .anyMatch(other -> !warns(other, "dowel-edges"));
  }

  private static boolean warns(Design design, String rule) {
    return Checks.of(design).stream().anyMatch(finding -> finding.rule().equals(rule));
  }

  private static Optional<Design> solved(String yaml, String... settings) {
    try {
      return Optional.of(Designs.of(yaml, settings));
    } catch (RackFileException e) {
      return Optional.empty();
    }
  }
}
