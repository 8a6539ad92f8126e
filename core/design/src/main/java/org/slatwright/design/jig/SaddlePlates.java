package org.slatwright.design.jig;

import static org.slatwright.design.outline.Outlines.Corner.round;
import static org.slatwright.design.outline.Outlines.Corner.sharp;

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
import org.slatwright.design.outline.Outlines.Corner;

/**
 * The plates of a saddle and where each of them stands.
 *
 * <p>The tabs of the cheeks go through the whole stack and end flush with it, so nothing stands in
 * the way of the chuck. Their arms carry the register.
 *
 * @param seatPlate a guide plate bored for the bush, where there is one; the guide plate on the
 *     wood is what it sits on
 */
record SaddlePlates(
    Saddle saddle, Plate guidePlate, Plate cheek, Plate register, Optional<Plate> seatPlate) {

  static SaddlePlates of(Saddle saddle) {
    int guides = saddle.bush().isPresent() ? 1 : saddle.guidePlates();
    return new SaddlePlates(
        saddle,
        guidePlate(saddle, "J1", "guide plate", guides, saddle.guideDiameter()),
        cheek(saddle),
        register(saddle),
        saddle
            .bush()
            .map(bush -> guidePlate(saddle, "J4", "seat plate", saddle.guidePlates() - 1, bush)));
  }

  List<Plate> all() {
    return Stream.concat(Stream.of(guidePlate, cheek, register), seatPlate.stream()).toList();
  }

  List<Jig.Placed> placed() {
    return Stream.concat(stack(), Stream.concat(cheeks(), Stream.of(placedRegister()))).toList();
  }

  private static Plate guidePlate(
      Saddle saddle, String mark, String name, int quantity, Length bore) {
    Length sheet = saddle.sheet();
    Length left = saddle.web();
    Length right = saddle.guideWidth().minus(saddle.web()).minus(sheet);
    Length play = saddle.allowances().slotPlay();
    Span lower = lowerTab(saddle).longer(play);
    Span upper = upperTab(saddle).longer(play);
    Stream<Outline> slots =
        Stream.of(lower, upper)
            .flatMap(span -> Stream.of(left, right).map(x -> slot(x, span, sheet)));
    return new Plate(
        mark,
        name,
        quantity,
        sheet,
        Outlines.roundedRectangle(
            saddle.guideWidth(), saddle.guideHeight(), saddle.allowances().cornerRadius()),
        Stream.concat(slots, saddle.windowInGuide().stream()).toList(),
        bores(saddle, bore));
  }

  private static Outline slot(Length x, Span span, Length sheet) {
    return Outlines.rectangle(new Point2(x, span.from()), sheet, span.size());
  }

  private static List<Outline.Circle> bores(Saddle saddle, Length diameter) {
    Length middle = saddle.guideWidth().half();
    return saddle.holes().stream()
        .map(hole -> new Point2(middle, hole.plus(saddle.bottom()).negated()))
        .map(centre -> new Outline.Circle(centre, diameter))
        .toList();
  }

  private static Plate cheek(Saddle saddle) {
    return new Plate(
        "J2",
        "cheek",
        2,
        saddle.sheet(),
        cheekBoundary(saddle),
        List.of(registerSlot(saddle)),
        List.of());
  }

  /** A leg beside the upright, an arm beside the rail edge, and two tabs through the stack. */
  private static Outline.Path cheekBoundary(Saddle saddle) {
    Length root = saddle.guideDepth();
    Length legEnd = root.plus(saddle.legEnd());
    Length armEnd = root.plus(saddle.cheekEnd());
    Length underArm = saddle.armUnderside().minus(saddle.bottom());
    Length radius = saddle.allowances().cornerRadius();
    List<Corner> legAndArm =
        List.of(
            sharp(root, Length.ZERO),
            round(legEnd, Length.ZERO, radius),
            round(legEnd, underArm, radius),
            round(armEnd, underArm, radius),
            round(armEnd, saddle.height(), radius),
            sharp(root, saddle.height()));
    Stream<Corner> tabs =
        Stream.of(upperTab(saddle), lowerTab(saddle)).flatMap(tab -> tab.downFrom(root));
    return Outlines.rightAngled(Stream.concat(legAndArm.stream(), tabs).toList());
  }

  /** The play is behind the register and below it: the saddle bears down on the register. */
  private static Outline registerSlot(Saddle saddle) {
    Length play = saddle.allowances().slotPlay();
    Length near = saddle.guideDepth().plus(saddle.registerStart());
    Length railEdge = saddle.bottom().negated();
    return Outlines.rectangle(
        new Point2(near, railEdge.minus(play)),
        saddle.registerWidth().plus(play),
        saddle.sheet().plus(play));
  }

  /** A straight key with a head that stops it at the left cheek and a tail to push it out by. */
  private static Plate register(Saddle saddle) {
    Length head = saddle.allowances().grip();
    Length end = head.plus(saddle.overCheeks()).plus(saddle.web());
    Length near = saddle.web();
    Length far = near.plus(saddle.registerWidth());
    Length headFar = far.plus(saddle.web());
    Length radius = saddle.allowances().cornerRadius();
    Outline.Path boundary =
        Outlines.rightAngled(
            List.of(
                round(Length.ZERO, Length.ZERO, radius),
                sharp(head, Length.ZERO),
                sharp(head, near),
                round(end, near, radius),
                round(end, far, radius),
                sharp(head, far),
                sharp(head, headFar),
                round(Length.ZERO, headFar, radius)));
    return new Plate("J3", "register", 1, saddle.sheet(), boundary, List.of(), List.of());
  }

  private Stream<Jig.Placed> stack() {
    Length left = saddle.guideWidth().half().negated();
    return IntStream.range(0, saddle.guidePlates())
        .mapToObj(
            i ->
                new Jig.Placed(
                    i == 0 ? guidePlate : seatPlate.orElse(guidePlate),
                    new Placement(
                        new Point3(left, saddle.sheet().times(-i), saddle.bottom()),
                        Direction.PLUS_X,
                        Direction.PLUS_Z)));
  }

  private Stream<Jig.Placed> cheeks() {
    Length left = saddle.overCheeks().half().negated();
    Length right = left.plus(saddle.sheet()).plus(saddle.inside());
    return Stream.of(left, right)
        .map(x -> new Point3(x, saddle.guideDepth().negated(), saddle.bottom()))
        .map(corner -> new Placement(corner, Direction.PLUS_Y, Direction.PLUS_Z))
        .map(placement -> new Jig.Placed(cheek, placement));
  }

  private Jig.Placed placedRegister() {
    Length left = saddle.overCheeks().half().plus(saddle.allowances().grip()).negated();
    Point3 corner = new Point3(left, saddle.registerStart().minus(saddle.web()), Length.ZERO);
    return new Jig.Placed(register, new Placement(corner, Direction.PLUS_X, Direction.PLUS_Y));
  }

  private static Span lowerTab(Saddle saddle) {
    return Span.of(saddle.web(), saddle.lowerTab());
  }

  private static Span upperTab(Saddle saddle) {
    Length above = saddle.web().plus(saddle.allowances().slotPlay()).plus(saddle.upperTab());
    return Span.of(saddle.height().minus(above), saddle.upperTab());
  }

  /** A stretch along an edge: of a tab, or of the slot around it. */
  private record Span(Length from, Length to) {

    static Span of(Length from, Length size) {
      return new Span(from, from.plus(size));
    }

    Length size() {
      return to.minus(from);
    }

    /** The corners of a tab that reaches from {@code root} left to zero, from the top down. */
    Stream<Corner> downFrom(Length root) {
      return Stream.of(
          sharp(root, to), sharp(Length.ZERO, to), sharp(Length.ZERO, from), sharp(root, from));
    }

    /** Longer by {@code play} at its upper end. */
    Span longer(Length play) {
      return new Span(from, to.plus(play));
    }
  }
}
