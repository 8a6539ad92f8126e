package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

class PlanTextTest {

  private static final Plan WITH_AN_ERROR = SamplePlans.everyKind();

  @Test
  void aFindingSaysWhereWhatAndWhatToDo() {
    assertEquals(
        List.of(
            "error: rail R: too short; cut it 125 mm long [a table]",
            "warning: upright U: stands alone",
            "note: timber.frame: a note; with, commas"),
        WITH_AN_ERROR.findings().stream().map(PlanText::finding).toList());
  }

  @Test
  void aChainIsASumWhoseSolvedTermsAreMarked() {
    assertEquals(
        List.of("depth  164 mm = upright 44 + rail 120*", "* solved, not given in the rack file"),
        PlanText.chains(WITH_AN_ERROR));
  }

  @Test
  void everyExampleFitsATerminal() {
    for (Plan plan : SamplePlans.examples()) {
      PlanText.chains(plan).forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }

  @Test
  void anErrorAmongTheFindingsMakesThePlanWrong() {
    assertEquals(ExitStatus.RACK_WRONG, ExitStatus.of(WITH_AN_ERROR));
    assertEquals(ExitStatus.DONE, ExitStatus.of(SamplePlans.bare(WITH_AN_ERROR)));
  }
}
