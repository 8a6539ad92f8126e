package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.math.Vector3D;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;

/**
 * What an eye sees of a rack at a place on the paper, by following its ray through every box.
 * Isometric axonometry: turned 45° about the upright axis and tilted by the angle whose sine is
 * 1/√3 (ISO 5456-3; from memory).
 */
final class Sight {

  private static final Vector3D TO_EYE = Vector3D.create(1, -1, 1).normalize();
  private static final Vector3D RIGHT = Vector3D.create(1, 1, 0).normalize();
  private static final Vector3D UP = Vector3D.create(-1, 1, 2).normalize();

  /** Which face is seen. */
  enum Side {
    RIGHT,
    FRONT,
    TOP,
    NONE
  }

  /** A face of a piece, or nothing. */
  record Seen(String piece, Side side) {}

  private record Solid(String id, double[] low, double[] high) {}

  private final List<Solid> solids = new ArrayList<>();
  private final double factor;
  private final double middleX;
  private final double middleY;
  private final Coordinate centre;

  /** As large as fits into the middle of {@code room}. */
  Sight(Assembly rack, PaperBox room) {
    Coordinate low = new Coordinate(Double.MAX_VALUE, Double.MAX_VALUE);
    Coordinate high = new Coordinate(-Double.MAX_VALUE, -Double.MAX_VALUE);
    for (Piece piece : rack.pieces()) {
      if (piece.part().role() != Role.DOWEL) {
        solids.add(new Solid(piece.id(), at(piece.box().low()), at(piece.box().high())));
      }
    }
    double[] least = at(rack.extent().low());
    double[] most = at(rack.extent().high());
    for (int corner = 0; corner < 8; corner++) {
      Vector3D point =
          Vector3D.create(
              (corner & 1) == 0 ? least[0] : most[0],
              (corner & 2) == 0 ? least[1] : most[1],
              (corner & 4) == 0 ? least[2] : most[2]);
      low.x = Math.min(low.x, point.dot(RIGHT));
      low.y = Math.min(low.y, point.dot(UP));
      high.x = Math.max(high.x, point.dot(RIGHT));
      high.y = Math.max(high.y, point.dot(UP));
    }
    factor = Math.min(room.width() / (high.x - low.x), room.height() / (high.y - low.y));
    centre = new Coordinate((low.x + high.x) / 2, (low.y + high.y) / 2);
    middleX = room.middleX();
    middleY = room.middleY();
  }

  private static double[] at(Point3 point) {
    return new double[] {point.x().inMm(), point.y().inMm(), point.z().inMm()};
  }

  private static Vector3D times(Vector3D vector, double by) {
    return Vector3D.create(vector.getX() * by, vector.getY() * by, vector.getZ() * by);
  }

  /** The nearest of all faces on the ray. */
  Seen at(Coordinate place) {
    Vector3D start =
        times(RIGHT, centre.x + (place.x - middleX) / factor)
            .add(times(UP, centre.y + (place.y - middleY) / factor));
    double[] from = {start.getX(), start.getY(), start.getZ()};
    double[] step = {TO_EYE.getX(), TO_EYE.getY(), TO_EYE.getZ()};
    Seen seen = new Seen("", Side.NONE);
    double nearest = -Double.MAX_VALUE;
    for (Solid solid : solids) {
      double enters = -Double.MAX_VALUE;
      double leaves = Double.MAX_VALUE;
      Side side = Side.NONE;
      for (int axis = 0; axis < 3; axis++) {
        double one = (solid.low()[axis] - from[axis]) / step[axis];
        double other = (solid.high()[axis] - from[axis]) / step[axis];
        enters = Math.max(enters, Math.min(one, other));
        if (Math.max(one, other) < leaves) {
          leaves = Math.max(one, other);
          side = Side.values()[axis];
        }
      }
      if (enters < leaves && leaves > nearest) {
        nearest = leaves;
        seen = new Seen(solid.id(), side);
      }
    }
    return seen;
  }
}
