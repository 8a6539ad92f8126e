package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/** Draws the sheets of a plan. */
public final class Drafting {

  private Drafting() {}

  /** All sheets, in order. */
  public static List<Sheet> sheets(Rack rack, Assembly assembly, Optional<Jig> jig) {
    List<SheetDrawing> drawings = new ArrayList<>();
    drawings.add(new GeneralArrangement(rack, assembly));
    jig.ifPresent(
        made -> {
          drawings.add(new JigSheet(rack, made));
          drawings.add(new JigPlatesSheet(rack, made));
        });
    return IntStream.range(0, drawings.size())
        .mapToObj(i -> drawings.get(i).sheet(i + 1, drawings.size()))
        .toList();
  }
}
