package org.slatwright.design.steps;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Wording;
import org.slatwright.design.sizing.Rack;

/** Every height is marked once, on the story rod, and taken from it. */
final class LayingOutTasks {

  static final String ROD = "make-story-rod";
  static final String UPRIGHTS = "lay-out-uprights";

  private LayingOutTasks() {}

  static List<Task> of(Build build) {
    return List.of(rod(build.rack()), uprights(build));
  }

  private static Task rod(Rack rack) {
    return Task.named(ROD, "Make the story rod")
        .does(
            "Cut a straight stick to {} and glue the story rod's template on it, or mark it with a"
                + " tape that is not moved.",
            rack.upright().length())
        .does(undersides(rack))
        .does(
            "Mark the top of each rail {} above its underside, and shade the rails.",
            rack.rail().height())
        .tools("tape", "square", "knife or sharp pencil")
        .takes(Times.SET_UP + Times.MARK * 2 * rack.shelves())
        .endsWhen("The last mark and the end of the rod are {} apart.", above(rack));
  }

  private static Length above(Rack rack) {
    Length last = rack.railUndersides().get(rack.shelves() - 1).plus(rack.rail().height());
    return rack.upright().length().minus(last);
  }

  private static Wording undersides(Rack rack) {
    List<Length> heights = rack.railUndersides();
    String gaps =
        String.join(", ", IntStream.range(0, heights.size()).mapToObj(i -> "{}").toList());
    String rails =
        heights.size() == 1
            ? "From the floor end, the underside of the rail is at "
            : "From the floor end, the undersides of the rails are at ";
    return new Wording(rails + gaps + ".", heights);
  }

  private static Task uprights(Build build) {
    Rack rack = build.rack();
    String lowest =
        rack.foot().isZero()
            ? "The lowest rails end level with the floor ends."
            : "The lowest rails begin {} above the floor ends.";
    Length[] foot = rack.foot().isZero() ? new Length[0] : new Length[] {rack.foot()};
    return Task.named(UPRIGHTS, "Lay out all uprights together")
        .does(
            "Clamp all uprights side by side, inner faces up and floor ends flush, and square both"
                + " edges of every rail across all of them from the story rod.")
        .does(lowest, foot)
        .does("Cross out the side of each line where the rail goes.")
        .with(Build.parts(build.assembly().pieces(Role.UPRIGHT)))
        .tools("story rod", "square", "two clamps", "knife or sharp pencil")
        .takes(Times.SET_UP + Times.MARK * 2 * rack.shelves())
        .after(ROD, CuttingTasks.SAND_FRAMES)
        .endsWhen("Every line runs on across all uprights without a step.");
  }
}
