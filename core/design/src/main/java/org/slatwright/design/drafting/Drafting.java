package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/** Draws the sheets of a plan. */
public final class Drafting {

  private Drafting() {}

  /** All sheets, in order. */
  public static List<Sheet> sheets(Rack rack, Assembly assembly, Optional<Jig> jig) {
    int count = jig.isPresent() ? 3 : 1;
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(new GeneralArrangement(rack, assembly).sheet(1, count));
    jig.ifPresent(
        made -> {
          sheets.add(new JigSheet(rack, made).sheet(2, count));
          sheets.add(new JigPlatesSheet(rack, made).sheet(3, count));
        });
    return sheets;
  }
}
