package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.framing.Diagonal;
import org.slatwright.design.jig.DrillingSteps;
import org.slatwright.design.sizing.Rack;

/** One frame: clamped dry, glued, drilled and pinned; all after the first are built against it. */
final class FrameTasks {

  /** Ends that one person spreads and closes before the glue skins over: labels, from memory. */
  private static final int MOST_RAILS_AT_ONCE = 8;

  private final Build build;
  private final Rack rack;
  private final Group frame;
  private final int number;
  private final Length diagonal;

  private FrameTasks(Build build, int number) {
    this.build = build;
    this.rack = build.rack();
    this.frame = build.frames().get(number - 1);
    this.number = number;
    this.diagonal = Diagonal.onTape(rack.frameDepth(), rack.upright().length(), rack.units());
  }

  /** Of all frames, from the left. */
  static List<Task> of(Build build) {
    List<Task> tasks = new ArrayList<>();
    for (int number = 1; number <= rack(build).frames(); number++) {
      tasks.addAll(new FrameTasks(build, number).all());
    }
    return tasks;
  }

  /** The last task of each frame. */
  static String[] ready(Build build) {
    return IntStream.rangeClosed(1, rack(build).frames())
        .mapToObj(number -> id("flush", number))
        .toArray(String[]::new);
  }

  private static Rack rack(Build build) {
    return build.rack();
  }

  private static String id(String what, int number) {
    return what + "-frame-" + number;
  }

  private List<Task> all() {
    List<Task> tasks = new ArrayList<>(List.of(dry()));
    if (inTwoGoes()) {
      tasks.add(glueFront());
    }
    tasks.add(glue());
    tasks.add(unclamp());
    tasks.add(drill());
    tasks.add(dowel());
    tasks.add(flush());
    return tasks;
  }

  private boolean isFirst() {
    return number == 1;
  }

  private boolean inTwoGoes() {
    return rack.shelves() > MOST_RAILS_AT_ONCE;
  }

  private Task dry() {
    Task.Draft draft =
        Task.named(id("dry", number), "Clamp frame " + number + " dry")
            .does(
                "Lay two uprights with their face sides outwards and set the rails to the lines.");
    hold(draft);
    if (!isFirst()) {
      draft.does(
          "Lay frame 1 under it, floor ends flush, and set every rail to its fellow below rather"
              + " than to the tape: the frames must match before all else.");
      draft.meanwhile(id("unclamp", number - 1));
    }
    return clamps(draft)
        .with(Build.parts(frame, Role.UPRIGHT, Role.RAIL))
        .tools("square", "tape", "mallet")
        .takes(Times.SET_UP + Times.CLAMP * 2 * rack.shelves())
        .after(LayingOutTasks.UPRIGHTS)
        .after(CuttingTasks.frameStocks(build))
        .endsWhen(square(), diagonal, tolerance());
  }

  /** What holds the rails at their heights. */
  private void hold(Task.Draft draft) {
    if (!rack.foot().isZero()) {
      draft.does("Hold the lowest rail {} from the floor ends with a block.", rack.foot());
    }
    for (Length spacing : spacings()) {
      draft.with(build.spares(spacing)).after(cutting(spacing));
    }
    if (spacings().size() == 1) {
      draft.does("Spacers of {} between the rails keep them apart.", spacings().get(0));
    } else if (!spacings().isEmpty()) {
      draft.does(
          "Spacers between the rails, cut to the heights of the story rod, keep them apart.");
    }
  }

  /** Spacers come off the stock that the saw is set up for. */
  private String[] cutting(Length spacing) {
    return build.cutting().spares().stream()
        .filter(spare -> spare.length().equals(spacing) && spare.fromOffcuts() > 0)
        .map(spare -> CuttingTasks.id(spare.stock()))
        .toArray(String[]::new);
  }

  private List<Length> spacings() {
    return rack.openings().stream()
        .map(opening -> opening.plus(rack.slats().thickness()))
        .distinct()
        .toList();
  }

  private Task.Draft clamps(Task.Draft draft) {
    Length pads = rack.units().metricOrInch(Length.mm(40), Length.inches(3, 2));
    return draft.supplies(
        rack.shelves() + (rack.shelves() == 1 ? " clamp that opens {}" : " clamps that open {}"),
        rack.frameDepth().plus(pads));
  }

  private Length tolerance() {
    return rack.units().metricOrInch(Length.mm(1), Length.inches(1, 16));
  }

  private static String square() {
    return "Both diagonals, over the outer corners of the uprights, are {}; the two differ by no"
        + " more than {}.";
  }

  /** Where there are too many ends for one go: rails first on one upright, the other as a caul. */
  private Task glueFront() {
    return clamps(
            Task.named(id("glue-front", number), "Glue the rails to the front of frame " + number))
        .does(
            "There are too many ends for the open time of the glue. Spread the front ends alone,"
                + " lay paper between the rear ends and the rear upright, and clamp all of it.")
        .does("Check that every rail is square to the upright before the glue grips.")
        .supplies("glue, about " + share(2))
        .with(Build.parts(frame, Role.RAIL))
        .tools("glue brush", "square", "mallet", "damp rag")
        .takes(Times.SET_UP + Times.JOIN * rack.shelves() + Times.CLAMP * rack.shelves())
        .waits(Times.CLAMPED, "the glue grips; leave the clamps on")
        .after(id("dry", number))
        .endsWhen("Every rail is square to the front upright.");
  }

  private Task glue() {
    Task.Draft draft = Task.named(id("glue", number), "Glue frame " + number);
    if (inTwoGoes()) {
      draft.does("Take the rear upright off, spread the rear ends and put it back.");
      draft.after(id("glue-front", number));
    } else {
      draft.does(
          "Spread both faces of each joint, from the middle of the frame outwards: the glue stays"
              + " open for 5 to 10 minutes.");
    }
    int ends = (inTwoGoes() ? 1 : 2) * rack.shelves();
    return clamps(draft)
        .does("Close the clamps a little at a time, rail by rail, until a bead stands all round.")
        .does("Wipe the beads off with a damp rag: nothing is drilled or sanded over hard glue.")
        .supplies("glue, about " + share(inTwoGoes() ? 2 : 1))
        .with(Build.parts(frame, Role.UPRIGHT, Role.RAIL))
        .placing(Build.ids(frame, Role.UPRIGHT, Role.RAIL))
        .showing(isFirst() ? Build.ids(frame, Role.UPRIGHT, Role.RAIL) : List.of())
        .tools("glue brush", "square", "tape", "mallet", "damp rag")
        .takes(Times.SET_UP + Times.JOIN * ends + Times.CLAMP * rack.shelves())
        .waits(Times.CLAMPED, "the glue grips; leave the clamps on, at no less than 10 °C (50 °F)")
        .after(id("dry", number))
        .endsWhen(square(), diagonal, tolerance());
  }

  private String share(int goes) {
    long grams =
        Math.max(1, Math.round((double) build.quantities().glue().grams() / rack.frames() / goes));
    return new Mass(grams).withUnit(rack.units());
  }

  private Task unclamp() {
    Task.Draft draft =
        Task.named(id("unclamp", number), "Take the clamps off frame " + number)
            .does("Scrape off what glue has come out, before it is hard.")
            .does("Lay the frame flat until the glue has cured; nothing is drilled before.")
            .tools("scraper", "tape")
            .takes(Times.FINEST + Times.CLAMP / 2 * rack.shelves())
            .waits(
                new Minutes(Times.CURED.count() - Times.CLAMPED.count()),
                "the glue cures, 24 h from gluing")
            .after(id("glue", number));
    return isFirst()
        ? draft.endsWhen("Both diagonals are still {}.", diagonal)
        : draft.endsWhen(
            "Both diagonals are still {}, and laid on frame 1 every rail is level with its fellow.",
            diagonal);
  }

  private Task drill() {
    Length inWood = rack.upright().depth().plus(rack.joint().holeDepth());
    Optional<Jig> jig = build.jig().inHand();
    Task.Draft draft = Task.named(id("drill", number), "Drill frame " + number);
    if (jig.isPresent()) {
      draft
          .does(
              "Set the stop on the bit to {}: {} guide, {} upright and {} in the rail.",
              inWood.plus(jig.get().guideDepth()),
              jig.get().guideDepth(),
              rack.upright().depth(),
              rack.joint().holeDepth())
          .does(
              "Jig on the outer face of the front upright, its register on "
                  + edge(jig.get())
                  + " of the rail. Begin with the lowest rail and go up; then turn the frame about"
                  + " and do the rear upright likewise.")
          .after(JigTasks.MAKE);
    } else {
      draft.does(
          "Mark the centres with the upright's template, set the stop on the bit to {}, and drill"
              + " square through the upright into the rail, with a square stood beside the bit.",
          inWood);
    }
    if (rack.joint().heights().size() > 1) {
      draft.does("Put a dry dowel into the first hole of a joint before you drill its second.");
    }
    return draft
        .does("Draw the bit out every {} to clear the chips.", rack.joint().diameter())
        .with(Build.parts(frame, Role.UPRIGHT, Role.RAIL))
        .tools("drill", "bit with stop", jig.isPresent() ? "jig" : "square", "clamps")
        .takes(Times.SET_UP + Times.DRILL_HOLE * holes())
        .after(id("unclamp", number))
        .minding(DrillingSteps.SAFETY)
        .endsWhen("A rule goes {} deep into each of the " + holes() + " holes.", inWood);
  }

  private String edge(Jig jig) {
    return DrillingSteps.edges(jig.railEdgeToHoles(), rack.rail().height());
  }

  private int holes() {
    return Build.ids(frame, Role.DOWEL).size();
  }

  private Task dowel() {
    return Task.named(id("dowel", number), "Drive the dowels of frame " + number)
        .does("Blow the holes clean. Glue in the hole, not only on the dowel.")
        .does(
            "Drive each dowel until the sound changes: it then ends level with the upright, {} deep"
                + " in the rail.",
            rack.joint().embedment())
        .with(Build.parts(frame, Role.DOWEL))
        .placing(Build.ids(frame, Role.DOWEL))
        .supplies("wood glue")
        .tools("mallet", "damp rag")
        .takes(Times.SET_UP + Times.DRIVE_DOWEL * holes())
        .waits(Times.CLAMPED, "the glue of the dowels sets")
        .after(id("drill", number), CuttingTasks.id(Stock.DOWEL_ROD))
        .endsWhen("No dowel stands back from the face of its upright.");
  }

  private Task flush() {
    return Task.named(id("flush", number), "Trim frame " + number + " flush")
        .does("Saw or chisel off what stands proud of the dowels, and sand the outer faces.")
        .does("Ease the ends of the uprights all round.")
        .tools("flush saw or chisel", "sanding block, grit 120")
        .takes(Times.SET_UP + Times.FLUSH_DOWEL * holes())
        .after(id("dowel", number))
        .minding("Chisel away from both hands.")
        .endsWhen("A finger drawn over a dowel does not feel it.");
  }
}
