package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * One piece of a part, in its place.
 *
 * @param id unique in the rack and stable: the part's mark, a hyphen and a number, {@code U-1}
 * @param part what it is a piece of
 * @param placement where it stands
 */
public record Piece(String id, Part part, Placement placement) {

  /** The box that it fills, in rack coordinates. */
  public Box box() {
    return placement.box(part.shape());
  }

  /** One of the part's holes as it stands in the rack. */
  public Bore bore(Hole hole) {
    Shape shape = part.shape();
    Length along = hole.along();
    Length across = hole.across();
    return switch (hole.face()) {
      case FACE_SIDE ->
          bore(
              hole, new Point3(along, across, shape.thickness()), placement.thickness().opposite());
      case BACK -> bore(hole, new Point3(along, across, Length.ZERO), placement.thickness());
      case FACE_EDGE -> bore(hole, new Point3(along, Length.ZERO, across), placement.width());
      case BACK_EDGE ->
          bore(hole, new Point3(along, shape.width(), across), placement.width().opposite());
      case START_END -> bore(hole, new Point3(Length.ZERO, along, across), placement.length());
      case FAR_END ->
          bore(hole, new Point3(shape.length(), along, across), placement.length().opposite());
    };
  }

  private Bore bore(Hole hole, Point3 own, Direction inward) {
    return new Bore(placement.toRack(own), inward, hole.diameter(), hole.depth());
  }
}
