package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

class ChainTextTest {

  @Test
  void aChainIsASumWhoseSolvedTermsAreMarked() {
    assertEquals(
        List.of("depth  164 mm = upright 44 + rail 120*", "* solved, not given in the rack file"),
        ChainText.of(SamplePlans.everyKind()));
  }

  @Test
  void everyExampleFitsATerminal() {
    for (Plan plan : SamplePlans.examples()) {
      ChainText.of(plan).forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }
}
