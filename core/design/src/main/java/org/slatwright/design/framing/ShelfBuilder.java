package org.slatwright.design.framing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point3;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/** Lays the slats of each shelf, from the floor up, and fastens them to the rails they cross. */
final class ShelfBuilder {

  /** Wood left between a brad and a dowel it passes; our choice, so that a crooked one misses. */
  private static final Length CLEAR_OF_DOWEL = Length.mm(2);

  /** The least of it, where the slat's end is near. */
  private static final Length WALL = Length.mm(1);

  private final Rack rack;
  private final List<ShelfRow> rows;
  private final Grid grid;
  private final PartSet parts;
  private final PieceIds ids;
  private final List<List<Piece>> rails;
  private final List<Fastener> fasteners = new ArrayList<>();

  /** With the rails of each frame, each from the floor up. */
  ShelfBuilder(Rack rack, Grid grid, PartSet parts, PieceIds ids, List<List<Piece>> rails) {
    this.rack = rack;
    this.rows = rack.rows();
    this.grid = grid;
    this.parts = parts;
    this.ids = ids;
    this.rails = rails;
  }

  List<Fastener> fasteners() {
    return List.copyOf(fasteners);
  }

  Group build(int shelf) {
    List<Piece> slats = new ArrayList<>();
    rows.stream().filter(row -> row.shelf() == shelf).forEach(row -> lay(row, slats));
    return new Group("shelf-" + (shelf + 1), Group.Kind.SHELF, slats);
  }

  private void lay(ShelfRow row, List<Piece> slats) {
    List<Length> fronts = grid.slatFronts(row);
    for (int i = 0; i < row.slats().size(); i++) {
      Point3 corner =
          new Point3(grid.slatLeft(row.run()), fronts.get(i), grid.slatUnderside(row.shelf()));
      Part part = parts.slat(row.length(), row.slats().get(i));
      Piece slat =
          new Piece(
              ids.next(part), part, new Placement(corner, Direction.PLUS_X, Direction.PLUS_Y));
      slats.add(slat);
      fasten(slat, row.shelf());
    }
  }

  private void fasten(Piece slat, int shelf) {
    for (List<Piece> frameRails : rails) {
      Piece rail = frameRails.get(shelf);
      if (slat.box().low().x().isLessThan(rail.box().high().x())
          && rail.box().low().x().isLessThan(slat.box().high().x())) {
        fasten(slat, rail);
      }
    }
  }

  private void fasten(Piece slat, Piece rail) {
    Box top = slat.box();
    int count = rack.fixing().perEnd();
    for (int i = 0; i < count; i++) {
      Length back = slat.part().shape().width().times(2L * i + 1).dividedBy(2L * count);
      Point3 head = new Point3(across(slat, rail, i), top.low().y().plus(back), top.high().z());
      fasteners.add(
          new Fastener(
              rack.fixing().kind(),
              rack.fixing().length(),
              rack.fixing().diameter(),
              head,
              Direction.MINUS_Z,
              slat,
              rail));
    }
  }

  /**
   * Where along the slat a fastener goes, always beside the dowel that lies in the middle of the
   * rail: to the left and right in turn, so that a row does not split one line of grain; on the
   * side of the slat where it reaches half over.
   */
  private Length across(Piece slat, Piece rail, int index) {
    Box bearer = rail.box();
    Length middle = bearer.low().x().plus(rack.rail().width().half());
    Length beside = besideDowel();
    Length onHalf = Length.max(beside, besideEnd());
    if (slat.box().high().x().isLessThan(bearer.high().x())) {
      return middle.minus(onHalf);
    }
    if (slat.box().low().x().isMoreThan(bearer.low().x())) {
      return middle.plus(onHalf);
    }
    return index % 2 == 0 ? middle.minus(beside) : middle.plus(beside);
  }

  /**
   * From the end of a slat that reaches half over the rail: half of that, or three diameters where
   * one and a half are left to the edge of the rail, so that neither splits.
   */
  private Length besideEnd() {
    Length diameter = rack.fixing().diameter();
    Length halfRail = rack.rail().width().half();
    Length toEnd = Length.min(diameter.times(3), halfRail.minus(diameter.times(3).half()));
    return Length.max(halfRail.half(), toEnd);
  }

  /**
   * From the middle of a rail: clear of the dowel, but three diameters from the end of a slat that
   * ends with the rail, where there is room for both; a fastener that only passes the dowel still
   * holds, one that meets it does not. Never out of the side of the rail, which the checks warn of.
   */
  private Length besideDowel() {
    Length diameter = rack.fixing().diameter();
    Length halfRail = rack.rail().width().half();
    Length passing = rack.joint().diameter().half().plus(diameter.half());
    Length clear = passing.plus(CLEAR_OF_DOWEL).snappedUp(rack.increment());
    Length best =
        Length.max(passing.plus(WALL), Length.min(clear, halfRail.minus(diameter.times(3))));
    return Length.min(best, halfRail.minus(diameter.half()));
  }
}
