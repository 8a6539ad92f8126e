package org.slatwright.design.framing;

import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutLine;

/** The cut list: every unique part, what to cut it from and what to mind. */
public final class CutList {

  private CutList() {}

  /** One line a part, in the order of the parts list. */
  public static List<CutLine> of(Assembly assembly, LengthFormat lengths) {
    return assembly.parts().stream()
        .map(part -> new CutLine(part, timber(part, lengths), note(part)))
        .toList();
  }

  private static String timber(Part part, LengthFormat lengths) {
    Shape shape = part.shape();
    String section =
        part.material().stock() == Stock.DOWEL_ROD
            ? lengths.withUnit(shape.thickness())
            : section(part, lengths);
    return part.material().species() + ", " + part.material().stock().word() + " " + section;
  }

  private static String section(Part part, LengthFormat lengths) {
    StockSection section = StockSection.of(part);
    return lengths.section(section.first(), section.second());
  }

  private static String note(Part part) {
    return switch (part.role()) {
      case UPRIGHT -> "all at one stop-block setting; " + holes(part) + " through the face side";
      case RAIL -> "all at one stop-block setting; ends square, they are glued";
      case SLAT -> "ease the edges";
      case DOWEL -> "chamfer the end that goes in";
    };
  }

  private static String holes(Part part) {
    int count = part.holes().size();
    return count == 1 ? "1 dowel hole" : count + " dowel holes";
  }
}
