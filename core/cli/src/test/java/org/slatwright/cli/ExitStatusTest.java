package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

class ExitStatusTest {

  @Test
  void anErrorAmongTheFindingsMakesThePlanWrong() {
    Plan withAnError = SamplePlans.everyKind();
    assertEquals(ExitStatus.RACK_WRONG, ExitStatus.of(withAnError));
    assertEquals(ExitStatus.DONE, ExitStatus.of(SamplePlans.bare(withAnError)));
  }
}
