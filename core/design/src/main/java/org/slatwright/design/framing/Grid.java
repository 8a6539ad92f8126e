package org.slatwright.design.framing;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/** Where the frames, rails and slats of a rack stand, in rack coordinates. */
record Grid(Rack rack) {

  /** The left face of a frame's uprights. */
  Length frameLeft(int frame) {
    Length pitch = rack.upright().width().plus(rack.interiorWidth());
    return rack.slats().overhang().plus(pitch.times(frame));
  }

  /** The plane in the middle of a frame, where slats that end on it meet. */
  Length middle(int frame) {
    return frameLeft(frame).plus(rack.upright().width().half());
  }

  /** The left face of a frame's rails, centred on its uprights. */
  Length railLeft(int frame) {
    return middle(frame).minus(rack.rail().width().half());
  }

  /**
   * From the left face of a rail to the dowel axis at its front or its rear end.
   *
   * <p>An upright is drilled half its width from its face edge, which lies to the right in front
   * and to the left behind. Where the width is an odd number of nanometres the two axes are one
   * nanometre apart; each hole in the rail follows its own upright, so that they meet exactly.
   */
  Length railBackToAxis(boolean front) {
    Length width = rack.upright().width();
    Length half = width.half();
    Length toMiddle = rack.rail().width().half();
    return front ? toMiddle.plus(width.minus(half).minus(half)) : toMiddle;
  }

  /** The plane between the front uprights and the rails. */
  Length railFront() {
    return rack.upright().depth();
  }

  /** The plane between the rails and the rear uprights. */
  Length railBack() {
    return railFront().plus(rack.rail().length());
  }

  /** The underside of the rails of a shelf, which is also how high its uprights' holes start. */
  Length railUnderside(int shelf) {
    return rack.railUndersides().get(shelf);
  }

  /** The underside of the slats of a shelf. */
  Length slatUnderside(int shelf) {
    return railUnderside(shelf).plus(rack.rail().height());
  }

  /** The front edge of each slat of a row. */
  List<Length> slatFronts(ShelfRow row) {
    return row.fronts().stream().map(railFront()::plus).toList();
  }

  /** The left end of the slats of a bay; of the first one when they run through. */
  Length slatLeft(int bay) {
    Length width = rack.upright().width();
    return bay == 0 ? Length.ZERO : frameLeft(bay).plus(width.minus(width.half()));
  }

  /** Heights of the dowel centres above the floor, from the floor up. */
  Stream<Length> dowelHeights() {
    return rack.railUndersides().stream()
        .flatMap(underside -> rack.joint().heights().stream().map(underside::plus));
  }
}
