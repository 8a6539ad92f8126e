package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.slatwright.api.measure.Length;

/** The keys of the entries of {@code holds}. */
record HeldKeys(Kinds kinds) {

  private static final int LONGEST_NAME = 100;
  private static final int MOST_ALIKE = 10_000;

  /** As many as there may be openings, so that each can have its own. */
  private static final int MOST_THINGS = 99;

  private static final String HELD =
      "{ name: seed tray, width: 285 mm, depth: 545 mm, height: 60 mm }";

  List<RackFile.Held> read(Fields top) {
    Set<String> names = new TreeSet<>();
    List<RackFile.Held> things = top.list("holds", "[ " + HELD + " ]", entry -> held(entry, names));
    if (things.size() > MOST_THINGS) {
      top.refuse("holds", "holds lists " + things.size() + " things; 99 are the most");
    }
    return things;
  }

  private RackFile.Held held(Value entry, Set<String> names) {
    Fields held = entry.asGroup(HELD);
    Given<String> name = held.required("name", Kinds.text(LONGEST_NAME), "seed tray");
    RackFile.Held read =
        new RackFile.Held(
            name.value(),
            held.required("width", kinds.length(), "285 mm").value(),
            held.required("depth", kinds.length(), "545 mm").value(),
            held.required("height", kinds.length(), "60 mm").value(),
            count(held, "across"),
            count(held, "deep"),
            count(held, "high"),
            lie(held),
            held.orDefault("clearance", kinds.lengthOrNone(), Length.ZERO).value());
    held.close();
    if (!names.add(name.value())) {
      held.refuse("name", "another thing has the name " + Quoted.of(name.value()) + " already");
    }
    return read;
  }

  private static int count(Fields held, String key) {
    return held.orDefault(key, Kinds.count(1, MOST_ALIKE), 1).value();
  }

  private static RackFile.Lie lie(Fields held) {
    return held.orDefault(
            "lie", Kinds.oneOf(RackFile.Lie.values(), RackFile.Lie::word), RackFile.Lie.AS_GIVEN)
        .value();
  }
}
