package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;

/**
 * All things that the rack must hold, each by itself and not at once.
 *
 * @param all in the order of the file
 */
record Things(List<Thing> all) {

  Things {
    all = List.copyOf(all);
  }

  /**
   * Each thing as it lies: as given, unless it may lie either way and fits the sizes that are given
   * only the other way.
   *
   * @param longestRail that the given sizes allow; empty when they leave it free
   */
  static Things lie(Worksheet sheet, Optional<Length> longestRail) {
    Optional<Length> width = sheet.file().rack().interiorWidth().map(Given::value);
    return new Things(
        sheet.file().holds().stream().map(held -> lie(sheet, held, width, longestRail)).toList());
  }

  private static Thing lie(
      Worksheet sheet, RackFile.Held held, Optional<Length> width, Optional<Length> rail) {
    Thing asGiven = new Thing(held, false);
    Thing turned = new Thing(held, true);
    boolean mayTurn = held.lie() == RackFile.Lie.EITHER_WAY;
    if (!mayTurn || fits(asGiven, width, rail) || !fits(turned, width, rail)) {
      return asGiven;
    }
    sheet.note(
        "holds",
        held.name() + " lies with its depth along the shelf: the other way it does not fit",
        "");
    return turned;
  }

  private static boolean fits(Thing thing, Optional<Length> width, Optional<Length> rail) {
    return width.filter(thing.needAcross()::isMoreThan).isEmpty()
        && rail.filter(thing.needDeep()::isMoreThan).isEmpty();
  }

  /** The one that needs the widest rack; empty where nothing is to be held. */
  Optional<Thing> widest() {
    return greatest(Thing::needAcross);
  }

  /** The one that needs the longest rails; empty where nothing is to be held. */
  Optional<Thing> deepest() {
    return greatest(Thing::needDeep);
  }

  /** The one that needs the highest opening; empty where nothing is to be held. */
  Optional<Thing> highest() {
    return greatest(Thing::needAbove);
  }

  /** The first of them where they need the same. */
  private Optional<Thing> greatest(Function<Thing, Length> need) {
    return all.stream().reduce((a, b) -> need.apply(b).isMoreThan(need.apply(a)) ? b : a);
  }
}
