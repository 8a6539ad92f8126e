package org.slatwright.design.machining;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Shape;

/**
 * A face of a part as a machine sees it, from outside the part: x along the face's own first
 * distance, y up.
 *
 * @param width of the face, along x
 * @param height of the face, along y
 * @param left the face that its left edge belongs to
 * @param below the face that its lower edge belongs to
 * @param fromTop whether the distance across counts down from the upper edge: seen from outside,
 *     along to the right and across upwards would mirror this face
 */
record FaceView(Face face, Length width, Length height, Face left, Face below, boolean fromTop) {

  static FaceView of(Face face, Shape shape) {
    Length length = shape.length();
    Length width = shape.width();
    Length thickness = shape.thickness();
    return switch (face) {
      case FACE_SIDE -> new FaceView(face, length, width, Face.START_END, Face.FACE_EDGE, false);
      case BACK -> new FaceView(face, length, width, Face.START_END, Face.BACK_EDGE, true);
      case FACE_EDGE -> new FaceView(face, length, thickness, Face.START_END, Face.BACK, false);
      case BACK_EDGE -> new FaceView(face, length, thickness, Face.START_END, Face.FACE_SIDE, true);
      case START_END -> new FaceView(face, width, thickness, Face.FACE_EDGE, Face.FACE_SIDE, true);
      case FAR_END -> new FaceView(face, width, thickness, Face.FACE_EDGE, Face.BACK, false);
    };
  }

  /** Where a hole of this face lies, from the lower left corner of the view. */
  Point2 centre(Hole hole) {
    return new Point2(hole.along(), fromTop ? height.minus(hole.across()) : hole.across());
  }

  /** Which way round the piece lies: {@code face side: start end left, face edge below}. */
  String words() {
    return face.word() + ": " + left.word() + " left, " + below.word() + " below";
  }
}
