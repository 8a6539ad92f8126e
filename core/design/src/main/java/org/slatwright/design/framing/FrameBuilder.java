package org.slatwright.design.framing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point3;
import org.slatwright.design.sizing.Rack;

/** Puts uprights, rails and dowels in their places, frame by frame from the left. */
final class FrameBuilder {

  private final Rack rack;
  private final Grid grid;
  private final PartSet parts;
  private final PieceIds ids;
  private final List<List<Piece>> rails = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();

  FrameBuilder(Rack rack, Grid grid, PartSet parts, PieceIds ids) {
    this.rack = rack;
    this.grid = grid;
    this.parts = parts;
    this.ids = ids;
  }

  /** The rails of each frame built so far, each from the floor up. */
  List<List<Piece>> rails() {
    return List.copyOf(rails);
  }

  List<Joint> joints() {
    return List.copyOf(joints);
  }

  Group build(int frame) {
    Piece front = upright(frontUpright(frame));
    Piece rear = upright(rearUpright(frame));
    List<Piece> pieces = new ArrayList<>(List.of(front, rear));
    List<Piece> frameRails = new ArrayList<>();
    for (int shelf = 0; shelf < rack.shelves(); shelf++) {
      Piece rail = rail(frame, shelf);
      frameRails.add(rail);
      pieces.add(rail);
      pieces.addAll(join(front, rail, shelf, Face.START_END));
      pieces.addAll(join(rear, rail, shelf, Face.FAR_END));
    }
    rails.add(List.copyOf(frameRails));
    return new Group("frame-" + (frame + 1), Group.Kind.FRAME, pieces);
  }

  /** Standing with its face side, the outer one, to the front: its width then runs to the left. */
  private Placement frontUpright(int frame) {
    Length right = grid.frameLeft(frame).plus(rack.upright().width());
    return new Placement(
        new Point3(right, grid.railFront(), Length.ZERO), Direction.PLUS_Z, Direction.MINUS_X);
  }

  private Placement rearUpright(int frame) {
    return new Placement(
        new Point3(grid.frameLeft(frame), grid.railBack(), Length.ZERO),
        Direction.PLUS_Z,
        Direction.PLUS_X);
  }

  private Piece upright(Placement placement) {
    return new Piece(ids.next(parts.upright()), parts.upright(), placement);
  }

  private Piece rail(int frame, int shelf) {
    Point3 corner = new Point3(grid.railLeft(frame), grid.railFront(), grid.railUnderside(shelf));
    return new Piece(
        ids.next(parts.rail()),
        parts.rail(),
        new Placement(corner, Direction.PLUS_Y, Direction.PLUS_Z));
  }

  /** Joins an end of a rail to an upright; gives the dowels. */
  private List<Piece> join(Piece upright, Piece rail, int shelf, Face railEnd) {
    List<Hole> uprightHoles = upright.part().holes();
    List<Hole> railHoles =
        rail.part().holes().stream().filter(hole -> hole.face() == railEnd).toList();
    int firstHole = shelf * railHoles.size();
    List<Joint.Pin> pins = new ArrayList<>();
    for (int i = 0; i < railHoles.size(); i++) {
      Hole through = uprightHoles.get(firstHole + i);
      pins.add(new Joint.Pin(dowel(upright, through), through, railHoles.get(i)));
    }
    joints.add(new Joint("J-" + (joints.size() + 1), upright, rail, pins));
    return pins.stream().map(Joint.Pin::dowel).toList();
  }

  /** A dowel flush with the outer face of the upright. */
  private Piece dowel(Piece upright, Hole hole) {
    Bore bore = upright.bore(hole);
    Direction thickness = bore.inward().cross(Direction.PLUS_Z);
    Length half = rack.joint().diameter().half();
    Point3 corner = bore.mouth().moved(Direction.MINUS_Z, half).moved(thickness.opposite(), half);
    return new Piece(
        ids.next(parts.dowel()),
        parts.dowel(),
        new Placement(corner, bore.inward(), Direction.PLUS_Z));
  }
}
