package org.slatwright.design.sizing;

import org.slatwright.api.measure.Length;

/**
 * The wood around a screw in a slat on a rail. In a pilot hole it wants 3 diameters to an end and 1
 * 1/2 to an edge (common practice, no source), and 1 mm to the dowel beside it.
 *
 * @param rail how wide it is
 * @param dowel how thick it is
 * @param slat how wide it is
 * @param perEnd how many share that
 * @param meets whether two slats meet on the middle of a rail
 */
record ScrewRoom(Length rail, Length dowel, Length slat, int perEnd, boolean meets) {

  private static final Length WALL = Length.mm(1);

  /** Whether one so thick has all that. */
  boolean takes(Length diameter) {
    Length toEnd = diameter.times(3);
    Length toEdge = diameter.times(3).half();
    Length besideDowel = dowel.plus(diameter).half().plus(WALL);
    boolean across = !besideDowel.plus(toEnd).isMoreThan(rail.half());
    boolean along = !toEnd.isMoreThan(slat.dividedBy(2L * perEnd));
    return across && along && !(meets && toEnd.plus(toEdge).isMoreThan(rail.half()));
  }
}
