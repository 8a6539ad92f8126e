package org.slatwright.design.jig;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.sizing.Rack;

/** Tells the maker how to put the jig together and how to drill with it. */
final class JigUse {

  private final Rack rack;
  private final Saddle saddle;
  private final LengthFormat lengths;

  JigUse(Rack rack, Saddle saddle) {
    this.rack = rack;
    this.saddle = saddle;
    this.lengths = rack.lengths();
  }

  /** The steps in order, without numbers. */
  List<String> steps() {
    DrillingSteps drilling = new DrillingSteps(rack, saddle.guideDepth());
    return Stream.of(
            Stream.of(DrillingSteps.SAFETY), assembly(), setting(), drilling.through("the jig"))
        .flatMap(part -> part)
        .toList();
  }

  private Stream<String> assembly() {
    return Stream.of(
        "Cut "
            + guidePlates()
            + seatPlates()
            + ", 2 cheeks J2 and 1 register J3 from "
            + show(saddle.sheet())
            + " sheet, and ease the slots by hand: the cheeks fit across them without play, the"
            + " register slides.",
        "Glue the guide plates on top of one another over the tabs of the cheeks J2, the long"
            + " arms of both cheeks pointing the same way"
            + (saddle.bush().isPresent() ? " and J1 next to the arms" : "")
            + "; the longer tabs fit the longer slots only, so no plate goes on upside down.",
        "Push the register J3 through both cheeks and a waxed "
            + show(saddle.guideDiameter())
            + " dowel through each row of guide holes to keep all in line, slide the stack towards"
            + " the shorter tabs until it stops, clamp it tight against the shoulders of the cheeks"
            + " over an offcut of the upright, and draw the dowel before the glue sets."
            + bush(),
        "Try it on the uprights: it slides on with "
            + show(saddle.allowances().spare())
            + " to spare between the cheeks, and the bit turns freely in it.");
  }

  private Stream<String> setting() {
    return Stream.of(
        "Let the glued frame set, scrape off the glue beside the joint, and support the frame so"
            + " that the jig can pass on both sides: the holes are drilled through upright and rail"
            + " as one. Whatever holds the frame to the bench stays "
            + show(besideRail())
            + " clear of every rail along the uprights."
            + squareLine(),
        "Put the jig over the outer face of the upright, the arms beside the rail, and push the"
            + " register through both cheeks over "
            + DrillingSteps.edges(saddle.holes(), rack.rail().height())
            + " of the rail.",
        "Press the guide stack flat against the face and the arms towards the rail until they bear"
            + " on the register and the register on the rail.",
        "Lay an offcut across both arms and clamp it to the other edge of the rail, and clamp the"
            + " land of the stack, beyond the register, to the inner face of the upright; no light"
            + " may show under the register or behind the guide stack.",
        lookThrough());
  }

  /** How far the guide stack reaches along the upright, whichever rail edge the register is on. */
  private Length besideRail() {
    Length beyondOtherEdge = saddle.bottom().negated().minus(rack.rail().height());
    return Length.max(saddle.guideTop(), beyondOtherEdge);
  }

  private String squareLine() {
    return saddle.windowInGuide().isPresent()
        ? " Square a pencil line from each rail edge that the register will rest on round to the"
            + " outer face."
        : "";
  }

  private String lookThrough() {
    return saddle.windowInGuide().isPresent()
        ? "Look through the window: the pencil line lies along its side nearest to the holes."
        : "See that the pencilled middle of the joint lies in the guide hole.";
  }

  private String seatPlates() {
    int seats = saddle.guidePlates() - 1;
    return saddle.bush().isEmpty()
        ? ""
        : ", " + seats + (seats == 1 ? " seat plate J4" : " seat plates J4");
  }

  private String bush() {
    return saddle
        .bush()
        .map(
            outside ->
                " Press the bush ("
                    + show(outside)
                    + " outside, at most "
                    + show(saddle.sheet().times(saddle.guidePlates() - 1L))
                    + " long) into each seat until it bears on J1.")
        .orElse("");
  }

  private String guidePlates() {
    int guides = saddle.bush().isPresent() ? 1 : saddle.guidePlates();
    return guides + (guides == 1 ? " guide plate J1" : " guide plates J1");
  }

  private String show(Length length) {
    return lengths.withUnit(length);
  }
}
