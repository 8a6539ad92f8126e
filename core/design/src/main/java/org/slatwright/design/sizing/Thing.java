package org.slatwright.design.sizing;

import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.RackFile;

/**
 * A thing that the rack must hold, as it lies on a shelf. Its clearance is kept beside, before and
 * behind each, and once above the topmost: n × size + (n + 1) × clearance on the shelf, n × height
 * + clearance above it.
 *
 * @param turned whether it lies with its depth along the shelf
 */
record Thing(RackFile.Held held, boolean turned) {

  String name() {
    return held.name();
  }

  /** Its size along the shelf. */
  Length along() {
    return turned ? held.depth() : held.width();
  }

  /** Its size front to back. */
  Length back() {
    return turned ? held.width() : held.depth();
  }

  /** The width between two frames that takes as many side by side as it must. */
  Length needAcross() {
    return row(along(), held.across());
  }

  /** The rail length that takes as many front to back as it must. */
  Length needDeep() {
    return row(back(), held.deep());
  }

  /** The clear height that takes as many on top of one another as it must. */
  Length needAbove() {
    return stack(held.high());
  }

  /** How many go side by side, and none where it is too wide. */
  int mostAcross(Length width) {
    return mostInRow(width, along());
  }

  int mostDeep(Length rail) {
    return mostInRow(rail, back());
  }

  int mostHigh(Length clear) {
    return most(clear.minus(held.clearance()), held.height());
  }

  /** What so many leave; what one lacks where there are none. */
  Length spareAcross(Length width) {
    return width.minus(row(along(), Math.max(1, mostAcross(width))));
  }

  Length spareDeep(Length rail) {
    return rail.minus(row(back(), Math.max(1, mostDeep(rail))));
  }

  Length spareAbove(Length clear) {
    return clear.minus(stack(Math.max(1, mostHigh(clear))));
  }

  /** {@code 2 × seed tray of 285 mm and 12 mm on each side}. */
  String acrossWords(Worksheet sheet) {
    return words(sheet, held.across(), along(), " on each side");
  }

  String deepWords(Worksheet sheet) {
    return words(sheet, held.deep(), back(), " before and behind each");
  }

  String aboveWords(Worksheet sheet) {
    return words(sheet, held.high(), held.height(), " above");
  }

  private String words(Worksheet sheet, int count, Length size, String where) {
    String many = count == 1 ? "" : count + " × ";
    String free = held.clearance().isZero() ? "" : " and " + sheet.show(held.clearance()) + where;
    return many + name() + " of " + sheet.show(size) + free;
  }

  private Length row(Length size, int count) {
    return size.times(count).plus(held.clearance().times(count + 1L));
  }

  private Length stack(int count) {
    return held.height().times(count).plus(held.clearance());
  }

  private int mostInRow(Length room, Length size) {
    return most(room.minus(held.clearance()), size.plus(held.clearance()));
  }

  private static int most(Length room, Length each) {
    return Math.toIntExact(Math.max(0, room.wholeTimes(each)));
  }
}
