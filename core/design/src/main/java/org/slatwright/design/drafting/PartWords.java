package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.design.framing.StockSection;

/** What is said above the drawing of a part. */
record PartWords(Part part, LengthFormat lengths, Scale scale) {

  Caption caption() {
    return new Caption(title(), details());
  }

  private String title() {
    return part.mark()
        + "  "
        + part.name()
        + ", "
        + part.quantity()
        + " off, "
        + size()
        + ", scale "
        + scale;
  }

  private String size() {
    if (part.shape() instanceof Shape.Rod rod) {
      return diameter(rod.diameter()) + " × " + lengths.withUnit(rod.length());
    }
    StockSection section = StockSection.of(part);
    return lengths.size(part.shape().length(), section.first(), section.second());
  }

  private String details() {
    return switch (part.role()) {
      case UPRIGHT -> holes(Face.FACE_SIDE) + " through the face side";
      case RAIL ->
          holes(Face.START_END)
              + ", "
              + lengths.withUnit(part.holes().get(0).depth())
              + " deep, in each end";
      case SLAT -> "ease the edges";
      case DOWEL -> "chamfer the end that goes in";
    };
  }

  private String holes(Face face) {
    List<Hole> holes = part.holes().stream().filter(hole -> hole.face() == face).toList();
    return holes.size() + " × " + diameter(holes.get(0).diameter());
  }

  /** {@code ø 10}. */
  String diameter(Length diameter) {
    return "ø " + lengths.number(diameter);
  }
}
