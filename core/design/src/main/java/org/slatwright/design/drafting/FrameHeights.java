package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.Spans.Span;

/**
 * The heights of a frame above the floor.
 *
 * @param rails from the floor up
 * @param dowels centres, rising
 * @param top of the uprights
 */
record FrameHeights(List<Box> rails, List<Length> dowels, Length top) {

  /** Between two parts of a frame, how much of the room beyond the last rail is shown. */
  private static final int SHARE_BEYOND = 3;

  /** Of one frame. */
  static FrameHeights of(Assembly frame) {
    Piece upright = frame.pieces(Role.UPRIGHT).get(0);
    return new FrameHeights(
        frame.pieces(Role.RAIL).stream().map(Piece::box).toList(),
        frame.joints().stream()
            .filter(joint -> joint.upright().equals(upright))
            .flatMap(joint -> joint.pins().stream())
            .map(Joint.Pin::uprightHole)
            .map(hole -> upright.bore(hole).mouth().z())
            .sorted()
            .toList(),
        upright.box().high().z());
  }

  /** Floor, underside and top of every rail, and the top of the uprights. */
  Collection<Length> edges() {
    TreeSet<Length> edges = new TreeSet<>(List.of(Length.ZERO, top));
    rails.forEach(rail -> edges.addAll(List.of(rail.low().z(), rail.high().z())));
    return edges;
  }

  /** Floor, centre of every dowel, and the top of the uprights. */
  Collection<Length> centres() {
    return Stream.of(Stream.of(Length.ZERO), dowels.stream(), Stream.of(top))
        .flatMap(heights -> heights)
        .toList();
  }

  /** The most parts that it can be shown in, each with two rails. */
  int mostParts() {
    return Math.max(1, rails.size() - 1);
  }

  /** So many parts from the floor up, the last rail of each being the first one of the next. */
  List<Shown> parts(int count) {
    List<Shown> parts = new ArrayList<>();
    int last = rails.size() - 1;
    for (int i = 0; i < count; i++) {
      int from = i * last / count;
      int to = (i + 1) * last / count;
      Length low = from == 0 ? Length.ZERO : rails.get(from).low().z().minus(beyond(from - 1));
      Length high = to == last ? top : rails.get(to).high().z().plus(beyond(to));
      parts.add(
          Shown.of(0, top.nanometres(), List.of(new Span(low.nanometres(), high.nanometres()))));
    }
    return parts;
  }

  /** Some of the room above a rail that is not the highest. */
  private Length beyond(int rail) {
    return rails.get(rail + 1).low().z().minus(rails.get(rail).high().z()).dividedBy(SHARE_BEYOND);
  }
}
