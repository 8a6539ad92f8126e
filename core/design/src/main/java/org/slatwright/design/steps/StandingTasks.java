package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.design.sizing.Rack;

/** The rack goes to its place, is braced or anchored, and takes its load. */
final class StandingTasks {

  static final String BRACE = "brace";
  static final String PLACE = "set-in-place";
  static final String LOAD = "load";

  private StandingTasks() {}

  static List<Task> of(Build build) {
    List<Task> tasks = new ArrayList<>();
    if (build.rack().braced()) {
      tasks.add(brace(build));
    }
    tasks.add(place(build));
    tasks.add(load(build));
    return tasks;
  }

  private static Task brace(Build build) {
    return Task.named(BRACE, "Brace the back")
        .does("Fix a diagonal or a panel across two frames at the back, screwed to each upright.")
        .tools("saw", "drill", "driver", "tape")
        .supplies("a batten or a panel, and screws")
        .takes(Times.SET_UP + 20)
        .after(ShelfTasks.lastOf(build))
        .endsWhen(
            "The rack does not sway when pushed along its slats, and both diagonals are alike.");
  }

  private static Task place(Build build) {
    Rack rack = build.rack();
    Task.Draft draft =
        rack.anchored()
            ? Task.named(PLACE, "Anchor the rack in its place")
                .does("Wedge the feet until it stands level both ways and does not rock.")
                .does(
                    "Fix the top of each frame to studs or masonry with angles or straps, by screws"
                        + " made for that wall; plasterboard alone holds nothing.")
                .supplies(rack.frames() + " angles or straps, and fixings for the wall")
            : Task.named(PLACE, "Set the rack in its place")
                .does("Wedge the feet until it stands level both ways and does not rock.")
                .does(
                    "Anchor its top to the wall all the same wherever children or animals may come,"
                        + " or where the checks say that it tips.");
    if (rack.braced()) {
      draft.after(BRACE);
    }
    return draft
        .tools("level", "drill", "driver", "detector for pipes and cables")
        .takes(Times.SET_UP + 15 + (rack.anchored() ? 10 * rack.frames() : 0))
        .after(FinishTasks.isFirst(rack) ? ShelfTasks.lastOf(build) : FinishTasks.RACK)
        .minding(
            "Look for pipes and cables before you drill. Local codes and the advice of licensed"
                + " trades come first.")
        .endsWhen(
            rack.anchored()
                ? "A pull forward at the top moves nothing."
                : "It stands on all feet and does not rock.");
  }

  private static Task load(Build build) {
    Rack rack = build.rack();
    return Task.named(LOAD, "Label and load it")
        .does(
            "If no error and no warning of the checks is left, write on the rack: "
                + rack.load().withUnit(rack.units())
                + " evenly on each shelf.")
        .does("Load it from the bottom up, heavy things low; nobody climbs, stands or sits on it.")
        .tools("marker")
        .takes(Times.FINEST)
        .after(PLACE)
        .endsWhen("Under its load it stands as straight as before.");
  }
}
