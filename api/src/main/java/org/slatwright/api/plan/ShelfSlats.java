package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * The slats of one shelf in one bay, or over all bays where they run through.
 *
 * @param shelf counted from the floor, 1 is the lowest
 * @param run counted from the left, 1 is the first; always 1 where slats run through
 * @param marks of the slats from the front back
 * @param gap between two of them
 * @param filled whether the boards give all of them
 */
public record ShelfSlats(int shelf, int run, List<String> marks, Length gap, boolean filled) {

  public ShelfSlats {
    marks = List.copyOf(marks);
  }
}
