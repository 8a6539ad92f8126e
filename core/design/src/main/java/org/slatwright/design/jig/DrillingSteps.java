package org.slatwright.design.jig;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.sizing.Rack;

/**
 * Tells the maker how to drill with a jig that is in place.
 *
 * @param guideDepth how far the guide holds the bit
 */
public record DrillingSteps(Rack rack, Length guideDepth) {

  /**
   * Before anything turns. Sources: 29 CFR 1910.133 for the eyes, 29 CFR 1910.213 and common
   * practice for the rest; from memory.
   */
  public static final String SAFETY =
      "Wear eye protection, clamp frame and jig so that nothing can turn with the bit, keep both"
          + " hands behind the bit, and wear no gloves or loose sleeves at a turning drill.";

  /** The steps. */
  Stream<String> through(String jig) {
    Length inWood = rack.upright().depth().plus(rack.joint().holeDepth());
    return Stream.of(
        "Set the stop on the bit to "
            + show(inWood.plus(guideDepth))
            + " from the corners of its cutting edges: "
            + show(guideDepth)
            + " guide + "
            + show(rack.upright().depth())
            + " upright + "
            + show(rack.joint().holeDepth())
            + " hole in the rail.",
        "If the bit is too short for that, drill as deep as it reaches, take "
            + jig
            + " off, set the stop to "
            + show(inWood)
            + " and go on in the same hole.",
        "Start the bit before it touches the wood, press straight along the guide, and draw it out"
            + " every "
            + show(rack.joint().diameter())
            + " to clear the chips.",
        "Nothing needs backing up: the guide holds the fibres where the bit goes in, and the rail"
            + " holds them where it leaves the upright.",
        afterDrilling(jig));
  }

  private String afterDrilling(String jig) {
    return rack.joint().heights().size() > 1
        ? "Put a dry dowel through "
            + jig
            + " into the first hole before drilling the next, and do not move "
            + jig
            + " between them. Then take dowel and jig off, blow the holes clean, and glue the"
            + " dowels in."
        : "Take " + jig + " off, blow the hole clean, and glue the dowel in.";
  }

  /**
   * The edges of a rail that the register may rest on, in words: either where the holes are as far
   * from one as from the other, to the nanometre.
   *
   * @param holes from the upper edge down, nearest first
   */
  public static String edges(List<Length> holes, Length railHeight) {
    Length both = holes.get(0).plus(holes.get(holes.size() - 1));
    boolean eitherWayUp = both.minus(railHeight).abs().nanometres() <= 1;
    return eitherWayUp ? "either edge" : "the upper edge";
  }

  private String show(Length length) {
    return rack.lengths().withUnit(length);
  }
}
