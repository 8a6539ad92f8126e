package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;

/**
 * A pair of uprights with the rail between them from above, front at the left, not to scale: face
 * sides thick, on face edges a triangle.
 *
 * @param front a joint of the front upright
 * @param rear a joint of the rear one
 */
public record FrameSketch(Joint front, Joint rear) {

  private static final double LETTERING = 2.5;
  private static final double SIDE = 8;
  private static final double RAIL = 24;
  private static final double RAIL_INSET = 1;
  private static final double WORDS = 1.5;
  private static final double TRIANGLE = 2;
  private static final double AIR = 2;

  /** In mm. */
  public double width() {
    return SIDE + RAIL + SIDE;
  }

  /** In mm. */
  public double height() {
    return SIDE + WORDS + LETTERING + AIR;
  }

  /** Drawn with its upper left corner there. */
  public List<Figure> figures(double left, double top) {
    PaperBox inFront = new PaperBox(left, top - SIDE, left + SIDE, top);
    PaperBox atRear =
        new PaperBox(inFront.right() + RAIL, top - SIDE, inFront.right() + RAIL + SIDE, top);
    List<Figure> figures = new ArrayList<>();
    figures.add(
        Strokes.box(
            inFront.right(),
            inFront.bottom() + RAIL_INSET,
            atRear.left(),
            top - RAIL_INSET,
            LineKind.THIN));
    figures.addAll(upright(front, inFront, "front"));
    figures.addAll(upright(rear, atRear, "rear"));
    return figures;
  }

  private static List<Figure> upright(Joint joint, PaperBox box, String place) {
    Piece piece = joint.upright();
    Direction outwards = piece.bore(joint.pins().get(0).uprightHole()).inward().opposite();
    double faceSide = outwards == Direction.MINUS_Y ? box.left() : box.right();
    boolean faceEdgeBelow = piece.placement().width() == Direction.MINUS_X;
    double faceEdge = faceEdgeBelow ? box.bottom() : box.top();
    double apex = faceEdgeBelow ? faceEdge + TRIANGLE : faceEdge - TRIANGLE;
    double middle = (box.left() + box.right()) / 2;
    return List.of(
        box.outline(LineKind.THIN),
        Strokes.line(faceSide, box.bottom(), faceSide, box.top(), LineKind.BORDER),
        new Figure.Fill(
            List.of(
                new PaperPoint(middle - TRIANGLE / 2, faceEdge),
                new PaperPoint(middle + TRIANGLE / 2, faceEdge),
                new PaperPoint(middle, apex)),
            Figure.Shade.INK),
        Paragraph.text(
            middle, box.bottom() - WORDS - LETTERING, LETTERING, place, Figure.Align.MIDDLE));
  }
}
