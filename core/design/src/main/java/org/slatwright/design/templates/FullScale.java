package org.slatwright.design.templates;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.templates.printing.Draft;
import org.slatwright.design.templates.printing.Printing;

/** Draws the templates of a rack. */
public final class FullScale {

  private FullScale() {}

  /** Every template, whole and as printed on the maker's paper. */
  public static Templates of(Rack rack, Assembly assembly, Optional<Jig> jig) {
    Printing printing =
        new Printing(rack.title(), rack.units(), rack.shop().paper(), rack.shop().printMargin());
    return printing.print(drafts(rack, assembly, jig));
  }

  private static List<Draft> drafts(Rack rack, Assembly assembly, Optional<Jig> jig) {
    return List.of();
  }
}
