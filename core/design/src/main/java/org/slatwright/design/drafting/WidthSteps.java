package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.drafting.HeightSteps.Step;

/**
 * The links of the width chain as they are drawn: frame, bay, frame, …. Of many bays the first is
 * drawn, and the others become one link, {@code 5 × 644 (= 3220)}.
 *
 * @param left overhang of the slats
 * @param right overhang of the slats
 */
record WidthSteps(Length left, Length frame, Length interior, int bays, Length right) {

  private static final int MOST_DRAWN_ONE_BY_ONE = 3;

  /** From the left. */
  List<Step> of(LengthFormat lengths) {
    List<Step> steps = new ArrayList<>();
    add(steps, left, lengths);
    add(steps, frame, lengths);
    add(steps, interior, lengths);
    if (bays > MOST_DRAWN_ONE_BY_ONE) {
      Length pitch = frame.plus(interior);
      Length all = pitch.times(bays - 1L);
      steps.add(new Step(all, HeightSteps.repeated(bays - 1, pitch, all, lengths)));
    } else {
      for (int bay = 1; bay < bays; bay++) {
        add(steps, frame, lengths);
        add(steps, interior, lengths);
      }
    }
    add(steps, frame, lengths);
    add(steps, right, lengths);
    return steps;
  }

  private static void add(List<Step> steps, Length length, LengthFormat lengths) {
    if (length.isPositive()) {
      steps.add(new Step(length, lengths.number(length)));
    }
  }
}
