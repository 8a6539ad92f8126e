package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Minutes;

/**
 * How to build the rack, step by step.
 *
 * @param steps in the order to do them
 * @param work all their work added up
 * @param elapsed from the first step to the end of the last for one person, waiting included where
 *     nothing else is left to do meanwhile
 */
public record OrderOfWork(List<Step> steps, Minutes work, Minutes elapsed) {

  /** Of a plan that tells no steps. */
  public static final OrderOfWork NONE = new OrderOfWork(List.of(), Minutes.ZERO, Minutes.ZERO);

  public OrderOfWork {
    steps = List.copyOf(steps);
  }
}
