package org.slatwright.design.jig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Outlines;
import org.slatwright.design.sizing.Rack;

/**
 * A drilling jig without any machine-made part: a bored block of the upright stock between two
 * cheeks of slat offcuts, and for its register an offcut of dowel that goes through both cheeks and
 * rests on the rail edge.
 *
 * <p>It reaches no farther along the upright or over the rail than the saddle and its register do,
 * and needs no tool that the rack itself does not. Sizes that the stock does not fix are common
 * practice, no source.
 *
 * @param blocks how many lie on one another to make the guide deep enough
 * @param bottom z of the lower end of block and cheeks
 * @param top z of their upper end
 * @param pinMiddle y of the middle of the register
 */
record OffcutJig(
    Rack rack, Allowances allowances, int blocks, Length bottom, Length top, Length pinMiddle) {

  /** For the rack, or empty where rails are wider than uprights: the cheeks straddle both. */
  static Optional<Jig> of(Rack rack) {
    return rack.rail().width().isMoreThan(rack.upright().width()) || slender(rack)
        ? Optional.empty()
        : Optional.of(sized(rack).jig());
  }

  /** Less wood than that beside a bore splits when the block is handled. */
  private static boolean slender(Rack rack) {
    Length beside = rack.upright().width().minus(rack.joint().diameter()).half();
    return beside.isLessThan(rack.joint().diameter().half());
  }

  private static OffcutJig sized(Rack rack) {
    Allowances allowances = new Allowances(rack.units());
    Length bit = rack.joint().diameter();
    Length depth = rack.upright().depth();
    List<Length> holes = Saddle.belowUpperEdge(rack);
    Length lowest = holes.get(holes.size() - 1);
    int blocks = Math.toIntExact(Saddle.leastGuideDepth(bit).snappedUp(depth).wholeTimes(depth));
    return new OffcutJig(
        rack,
        allowances,
        blocks,
        lowest.plus(bit.times(2)).snappedUp(rack.increment()).negated(),
        bit.plus(allowances.clampLand()).snappedUp(rack.increment()),
        depth.plus(allowances.glueGap()).plus(bit.half()));
  }

  private Jig jig() {
    Plate block = block();
    Plate cheek = cheek();
    Plate pin = pin();
    return new Jig(
        List.of(block, cheek, pin),
        placed(block, cheek, pin),
        bit(),
        guideDepth(),
        Saddle.belowUpperEdge(rack),
        allowances.spare().half(),
        steps());
  }

  private Plate block() {
    Point2 middle = new Point2(rack.upright().width().half(), bottom.negated());
    List<Outline.Circle> bores =
        Saddle.belowUpperEdge(rack).stream()
            .map(hole -> middle.moved(Length.ZERO, hole.negated()))
            .map(centre -> new Outline.Circle(centre, bit()))
            .toList();
    return new Plate(
        "K1",
        "block, upright stock",
        blocks,
        rack.upright().depth(),
        Outlines.rectangle(Point2.ORIGIN, rack.upright().width(), height()),
        List.of(),
        bores);
  }

  private Plate cheek() {
    Point2 pin = new Point2(guideDepth().plus(pinMiddle), bit().half().minus(bottom));
    return new Plate(
        "K2",
        "cheek, slat stock",
        2,
        rack.slats().thickness(),
        Outlines.rectangle(Point2.ORIGIN, pin.x().plus(bit().times(2)), height()),
        List.of(),
        List.of(new Outline.Circle(pin, bit())));
  }

  private Plate pin() {
    Length length = overCheeks().plus(allowances.grip().times(2)).snappedUp(rack.increment());
    return new Plate(
        "K3",
        "register, a dowel",
        1,
        bit(),
        Outlines.rectangle(Point2.ORIGIN, length, bit()),
        List.of(),
        List.of());
  }

  private List<Jig.Placed> placed(Plate block, Plate cheek, Plate pin) {
    Length left = overCheeks().half().negated();
    Length inner = rack.upright().width().plus(allowances.spare()).half();
    List<Jig.Placed> placed = new ArrayList<>();
    IntStream.range(0, blocks)
        .mapToObj(i -> rack.upright().depth().times(-i))
        .map(y -> new Point3(rack.upright().width().half().negated(), y, bottom))
        .forEach(at -> placed.add(placed(block, at, Direction.PLUS_X, Direction.PLUS_Z)));
    Stream.of(left, inner)
        .map(x -> new Point3(x, guideDepth().negated(), bottom))
        .forEach(at -> placed.add(placed(cheek, at, Direction.PLUS_Y, Direction.PLUS_Z)));
    Point3 pinEnd =
        new Point3(left.minus(allowances.grip()), pinMiddle.minus(bit().half()), Length.ZERO);
    placed.add(placed(pin, pinEnd, Direction.PLUS_X, Direction.PLUS_Y));
    return placed;
  }

  private static Jig.Placed placed(Plate plate, Point3 at, Direction length, Direction width) {
    return new Jig.Placed(plate, new Placement(at, length, width));
  }

  private List<String> steps() {
    Stream<String> making =
        Stream.of(
            DrillingSteps.SAFETY,
            "Saw "
                + (blocks == 1 ? "the block K1" : blocks + " blocks K1")
                + " from the upright stock and two cheeks K2 from slat offcuts, ends square, and K3"
                + " from dowel rod."
                + (blocks == 1 ? "" : " Glue the blocks on one another, edges flush."),
            "Square a line round the block for each hole, find the middle of its width on both"
                + " faces, and bore straight through on a drill press, or from both faces by hand to"
                + " meet in the middle; run the bit through once more.",
            "Clamp the cheeks together and bore both as one for the register.",
            "Screw the cheeks to the sides of the block, outer ends flush, a strip of card on either"
                + " side for "
                + show(allowances.spare())
                + " of play; keep the screws clear of the bores. It slides on the uprights without"
                + " a rattle.");
    Stream<String> setting =
        Stream.of(
            "Let the glued frame set and scrape off the glue beside the joint. Put the block on the"
                + " outer face of the upright, the cheeks beside upright and rail, and push the"
                + " register through both over "
                + DrillingSteps.edges(Saddle.belowUpperEdge(rack), rack.rail().height())
                + " of the rail.",
            "Clamp the block, beyond the register, to the inner face of the upright, with the"
                + " register pressed on the rail; no light may show under it or behind the block.");
    return Stream.of(making, setting, new DrillingSteps(rack, guideDepth()).through("the block"))
        .flatMap(part -> part)
        .toList();
  }

  private Length bit() {
    return rack.joint().diameter();
  }

  private Length guideDepth() {
    return rack.upright().depth().times(blocks);
  }

  private Length height() {
    return top.minus(bottom);
  }

  private Length overCheeks() {
    return rack.upright().width().plus(allowances.spare()).plus(rack.slats().thickness().times(2));
  }

  private String show(Length length) {
    return rack.lengths().withUnit(length);
  }
}
