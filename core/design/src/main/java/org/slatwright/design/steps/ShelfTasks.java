package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.Wording;
import org.slatwright.design.framing.Diagonal;
import org.slatwright.design.framing.Marks;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/** The frames are stood up, and the slats fixed: bottom shelf, top shelf, the ones between. */
final class ShelfTasks {

  static final String BLOCKS = "cut-blocks";
  static final String STAND = "stand-frames";
  static final String BOTTOM = "bottom-shelf";
  static final String TOP = "top-shelf";
  static final String BETWEEN = "shelves-between";

  private final Build build;
  private final Rack rack;
  private final List<Group> shelves;

  private ShelfTasks(Build build) {
    this.build = build;
    this.rack = build.rack();
    this.shelves = build.shelves();
  }

  static List<Task> of(Build build) {
    return new ShelfTasks(build).all();
  }

  /** After which all slats are in their places. */
  static String lastOf(Build build) {
    int shelves = build.shelves().size();
    return shelves == 1 ? BOTTOM : shelves == 2 ? TOP : BETWEEN;
  }

  private List<Task> all() {
    List<Task> tasks = new ArrayList<>(List.of(blocks(), stand(), bottom()));
    if (shelves.size() > 1) {
      tasks.add(top());
    }
    if (shelves.size() > 2) {
      tasks.add(between());
    }
    return tasks;
  }

  private Task blocks() {
    Task.Draft draft =
        Task.named(BLOCKS, "Cut the spacer blocks")
            .does("Two spacers of {} hold the frames apart.", rack.interiorWidth())
            .with(build.spares(rack.interiorWidth()));
    List<Length> gaps = gaps();
    if (!gaps.isEmpty() && gaps.size() <= 4) {
      draft.does(
          "Rip gap blocks "
              + String.join(", ", gaps.stream().map(gap -> "{}").toList())
              + " thick, two of each: they set the gaps between slats.",
          gaps.toArray(Length[]::new));
    } else if (!gaps.isEmpty()) {
      draft.does("The gaps differ from shelf to shelf: use the templates of the slats instead.");
    }
    return draft
        .tools("saw", "stop block")
        .takes(Times.SET_UP + Times.STOP_SETTING * (1 + gaps.size()))
        .after(CuttingTasks.id(Stock.SLAT), CuttingTasks.id(Stock.FRAME))
        .minding("Rip thin blocks off the edge of a long piece with a push stick.")
        .endsWhen("Both spacers, stood side by side, end level.");
  }

  private List<Length> gaps() {
    return rack.rows().stream()
        .filter(row -> row.slats().size() > 1)
        .map(ShelfRow::gap)
        .filter(Length::isPositive)
        .distinct()
        .sorted()
        .toList();
  }

  private Task stand() {
    boolean coated = FinishTasks.isFirst(rack);
    Task.Draft draft =
        Task.named(STAND, "Stand the frames up")
            .does(
                "On a flat floor, fronts the same way, {} apart: clamp a spacer near the floor and one"
                    + " near the top"
                    + (rack.bays() == 1 ? "." : " of each bay."),
                rack.interiorWidth());
    if (rack.topAbove().isPositive()) {
      draft.does(
          "The uprights run on {} above the top slats: keep the upper spacers below that.",
          rack.topAbove());
    }
    return draft
        .with(build.spares(rack.interiorWidth()))
        .showing(frames())
        .tools("clamps", "square", "level", "tape")
        .takes(Times.SET_UP + Times.CLAMP * 2 * rack.bays() + Times.FINEST)
        .after(BLOCKS)
        .after(coated ? new String[] {FinishTasks.PARTS} : FrameTasks.ready(build))
        .minding("A frame that stands alone falls over: have somebody hold it until it is clamped.")
        .endsWhen("Over all frames it is {} wide at the floor and at the top.", overFrames());
  }

  private List<String> frames() {
    return build.frames().stream()
        .flatMap(frame -> Build.ids(frame, Role.UPRIGHT, Role.RAIL).stream())
        .toList();
  }

  private Length overFrames() {
    return rack.interiorWidth()
        .times(rack.bays())
        .plus(rack.upright().width().times(rack.frames()));
  }

  private Task bottom() {
    Task.Draft draft = Task.named(BOTTOM, "Fix the bottom shelf");
    row(draft, List.of(0), List.of(0));
    fixing(draft);
    return draft.after(STAND, CuttingTasks.SAND_SLATS).endsWhen(ends());
  }

  private Wording ends() {
    return rack.slats().overhang().isZero()
        ? Wording.of("The ends of the slats are level with the outer faces of the frames.")
        : Wording.of(
            "The ends of the slats stand {} beyond the outer faces of the frames.",
            rack.slats().overhang());
  }

  private Task top() {
    Task.Draft draft = Task.named(TOP, "Fix the top shelf");
    row(draft, List.of(shelves.size() - 1), List.of(0, shelves.size() - 1));
    draft.does(
        "Before the last fixings go in, rack the frames until both diagonals across the back are"
            + " alike.");
    Length back = Diagonal.onTape(overFrames(), rack.upright().length(), rack.units());
    String level = rack.topAbove().isZero() ? " The top slats are level with the uprights." : "";
    fixing(draft);
    return draft
        .tools("tape")
        .after(BOTTOM)
        .endsWhen("Across the back, over the outer corners, both diagonals are {}." + level, back);
  }

  private Task between() {
    List<Integer> middle = IntStream.range(1, shelves.size() - 1).boxed().toList();
    Task.Draft draft =
        Task.named(
            BETWEEN, middle.size() == 1 ? "Fix the shelf between" : "Fix the shelves between");
    row(draft, middle, IntStream.range(0, shelves.size()).boxed().toList());
    fixing(draft);
    return draft.after(TOP).endsWhen(opening(), heights());
  }

  private String opening() {
    return rack.openings().stream().distinct().count() == 1
        ? "Between any two shelves the clear height is {}."
        : "From the floor up the clear heights are "
            + String.join(", ", rack.openings().stream().map(each -> "{}").toList())
            + ".";
  }

  private Length[] heights() {
    return rack.openings().stream().distinct().count() == 1
        ? new Length[] {rack.openings().get(0)}
        : rack.openings().toArray(Length[]::new);
  }

  /**
   * How the slats of those shelves lie.
   *
   * @param there the shelves that there are in the end
   */
  private void row(Task.Draft draft, List<Integer> which, List<Integer> there) {
    List<Piece> slats = slats(which);
    draft
        .with(Build.parts(slats))
        .placing(slats.stream().map(Piece::id).toList())
        .showing(frames())
        .showing(slats(there).stream().map(Piece::id).toList());
    List<ShelfRow> rows = rack.rows().stream().filter(row -> which.contains(row.shelf())).toList();
    ShelfRow first = rows.get(0);
    if (build.cutting().shelves().isEmpty()) {
      draft.does(lie(first));
    } else {
      build.cutting().shelves().stream()
          .filter(shelf -> which.contains(shelf.shelf() - 1))
          .forEach(shelf -> draft.does(lie(shelf), lengths(shelf)));
    }
    if (rack.slats().lengths().size() > 1) {
      draft.does("Go bay by bay from the left: slats meet on the middle of the inner frames.");
    }
    int fixings = (int) fixings(slats);
    draft
        .supplies(
            fixings + " " + build.fixing() + "s {} × {}",
            rack.fixing().diameter(),
            rack.fixing().length())
        .takes(Times.SET_UP + Times.LAY_SLAT * slats.size() + drive() * fixings);
  }

  private List<Piece> slats(List<Integer> which) {
    return which.stream().flatMap(i -> shelves.get(i).pieces().stream()).toList();
  }

  private static Wording lie(ShelfRow row) {
    String first = row.slats().size() == 1 ? "the slat " : "the first slat ";
    String others =
        row.slats().size() == 1
            ? "."
            : row.gap().isZero()
                ? ", the others close behind it."
                : ", the others behind it with gap blocks between.";
    return row.frontMargin().isZero()
        ? Wording.of("Lay " + first + "against the front uprights" + others)
        : Wording.of("Lay " + first + "{} behind the front uprights" + others, row.frontMargin());
  }

  private String lie(ShelfSlats shelf) {
    String bay = rack.slats().lengths().size() > 1 ? ", bay " + shelf.run() : "";
    return "Shelf "
        + shelf.shelf()
        + bay
        + ", from the front back: "
        + Marks.of(shelf.marks())
        + (shelf.marks().size() > 1 ? ", gaps {}." : ".");
  }

  private static Length[] lengths(ShelfSlats shelf) {
    return shelf.marks().size() > 1 ? new Length[] {shelf.gap()} : new Length[0];
  }

  private double drive() {
    return rack.fixing().kind() == Fastener.Kind.SCREW ? Times.DRIVE_SCREW : Times.DRIVE_BRAD;
  }

  private long fixings(List<Piece> slats) {
    return build.assembly().fasteners().stream()
        .filter(fastener -> slats.contains(fastener.through()))
        .count();
  }

  private void fixing(Task.Draft draft) {
    Rack.Fixing fixing = rack.fixing();
    String each =
        fixing.perEnd() == 1
            ? "one " + build.fixing() + " "
            : fixing.perEnd() + " " + build.fixing() + "s ";
    if (fixing.kind() == Fastener.Kind.SCREW) {
      draft
          .does(
              "Drill each slat {} for the shank and the rail about {} for the thread, then drive "
                  + each
                  + "where a slat crosses a rail, beside the dowels.",
              fixing.diameter(),
              pilot(fixing.diameter()))
          .tools("drill", "driver")
          .minding("Eye protection; keep your hand out of the way of a bit that slips.");
    } else {
      draft
          .does("Drive " + each + "where a slat crosses a rail, beside the dowels.")
          .tools("hammer or nailer", "nail set")
          .minding(
              "Eye protection. A brad can follow the grain and come out sideways: fingers a hand's"
                  + " breadth away.");
    }
  }

  /** Seven tenths of the shank: EN 1995-1-1, 10.4.5, from memory; to the next drill. */
  private Length pilot(Length diameter) {
    Length step = rack.units().metricOrInch(Length.mm(1).half(), Length.inches(1, 64));
    return Length.roundedMm(diameter.inMm() * 0.7).plus(step.half()).snappedDown(step);
  }
}
