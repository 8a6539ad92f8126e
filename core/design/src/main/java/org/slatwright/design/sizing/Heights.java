package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * Heights that close.
 *
 * @param foot floor to the underside of the lowest rail
 * @param clears clear height of every opening, from the floor up
 * @param evens those of the even ones alone
 * @param top how far the uprights run on above the top slats
 */
record Heights(Sized upright, Sized foot, List<Sized> clears, List<Length> evens, Sized top) {

  Heights {
    clears = List.copyOf(clears);
    evens = List.copyOf(evens);
  }

  List<Length> openings() {
    return clears.stream().map(Sized::length).toList();
  }

  /** Whether both are the same rack, wherever their sizes come from. */
  boolean measuresLike(Heights other) {
    return upright.length().equals(other.upright.length())
        && foot.length().equals(other.foot.length())
        && top.length().equals(other.top.length())
        && openings().equals(other.openings());
  }
}
