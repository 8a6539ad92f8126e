package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/** One thing that is checked. */
interface Rule {

  /**
   * What it finds, at most one finding a subject. A rule that reckons a number to compare with a
   * limit always says it, as a note where it is well; any other is silent where all is well.
   */
  Stream<Finding> check(Design design);
}
