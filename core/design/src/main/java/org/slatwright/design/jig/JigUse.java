package org.slatwright.design.jig;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.sizing.Rack;

/** Tells the maker how to put the jig together and how to drill with it. */
final class JigUse {

  /**
   * Before anything turns. Sources: 29 CFR 1910.133 for the eyes, 29 CFR 1910.213 and common
   * practice for the rest; from memory.
   */
  private static final String SAFETY =
      "Wear eye protection, clamp frame and jig so that nothing can turn with the bit, keep both"
          + " hands behind the bit, and wear no gloves or loose sleeves at a turning drill.";

  private final Rack rack;
  private final Saddle saddle;
  private final LengthFormat lengths;

  JigUse(Rack rack, Saddle saddle) {
    this.rack = rack;
    this.saddle = saddle;
    this.lengths = new LengthFormat(rack.units());
  }

  /** The steps in order, without numbers. */
  List<String> steps() {
    return Stream.of(Stream.of(SAFETY), assembly(), setting(), drilling())
        .flatMap(part -> part)
        .toList();
  }

  private Stream<String> assembly() {
    return Stream.of(
        "Cut "
            + guidePlates()
            + ", 2 cheeks J2 and 1 register J3 from "
            + show(saddle.sheet())
            + " sheet, and ease the slots by hand: the cheeks fit across them without play, the"
            + " register slides.",
        "Glue the guide plates J1 on top of one another over the tabs of the cheeks J2, the long"
            + " arms of both cheeks pointing the same way; the longer tabs fit the longer slots"
            + " only, so no plate goes on upside down.",
        "Push the register J3 through both cheeks and a waxed "
            + show(saddle.guideDiameter())
            + " dowel through each row of guide holes to keep all in line, slide the stack towards"
            + " the shorter tabs until it stops, clamp it tight against the shoulders of the cheeks"
            + " over an offcut of the upright, and draw the dowel before the glue sets.",
        "Try it on the uprights: it slides on with "
            + show(saddle.allowances().spare())
            + " to spare between the cheeks, and the bit turns freely in it.");
  }

  private Stream<String> setting() {
    return Stream.of(
        "Let the glued frame set, scrape off the glue beside the joint, and support the frame so"
            + " that the jig can pass on both sides: the holes are drilled through upright and rail"
            + " as one.",
        "Put the jig over the outer face of the upright, the arms beside the rail, and push the"
            + " register through both cheeks over "
            + edges()
            + " of the rail.",
        "Press the guide stack flat against the face and the arms towards the rail until they bear"
            + " on the register and the register on the rail.",
        "Lay an offcut across both arms and clamp it to the other edge of the rail; no light may"
            + " show under the register or behind the guide stack.");
  }

  private Stream<String> drilling() {
    Length inWood = rack.upright().depth().plus(rack.joint().holeDepth());
    return Stream.of(
        "Set the stop on the bit to "
            + show(inWood.plus(saddle.guideDepth()))
            + " from the corners of its cutting edges: "
            + show(saddle.guideDepth())
            + " guide + "
            + show(rack.upright().depth())
            + " upright + "
            + show(rack.joint().holeDepth())
            + " hole in the rail.",
        "If the bit is too short for that, drill as deep as it reaches, take the jig off, set the"
            + " stop to "
            + show(inWood)
            + " and go on in the same hole.",
        "Start the bit before it touches the wood, press straight along the guide, and draw it out"
            + " every "
            + show(saddle.guideDiameter())
            + " to clear the chips.",
        "Nothing needs backing up: the guide holds the fibres where the bit goes in, and the rail"
            + " holds them where it leaves the upright.",
        afterDrilling());
  }

  private String afterDrilling() {
    return saddle.holes().size() > 1
        ? "Put a dry dowel through the jig into the first hole before drilling the next, and do not"
            + " move the jig between them. Then take dowel and jig off, blow the holes clean, and"
            + " glue the dowels in."
        : "Take the jig off, blow the hole clean, and glue the dowel in.";
  }

  private String edges() {
    return worksEitherWayUp() ? "either edge" : "the upper edge";
  }

  /** Whether the holes are as far from one edge of the rail as from the other, to the nanometre. */
  private boolean worksEitherWayUp() {
    List<Length> holes = saddle.holes();
    Length both = holes.get(0).plus(holes.get(holes.size() - 1));
    return both.minus(rack.rail().height()).abs().nanometres() <= 1;
  }

  private String guidePlates() {
    return saddle.guidePlates()
        + (saddle.guidePlates() == 1 ? " guide plate J1" : " guide plates J1");
  }

  private String show(Length length) {
    return lengths.withUnit(length);
  }
}
