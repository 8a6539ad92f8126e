package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.LengthFormat;
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

  /** Every template before it is printed. */
  static List<Draft> drafts(Rack rack, Assembly assembly, Optional<Jig> jig) {
    LengthFormat lengths = rack.lengths();
    List<Draft> drafts = new ArrayList<>(UprightDrilling.of(assembly, lengths));
    drafts.add(JointWrap.of(assembly, lengths));
    drafts.addAll(RailEnds.of(assembly, lengths));
    drafts.addAll(SlatSpacing.of(assembly, lengths));
    drafts.add(StoryRod.of(assembly, lengths));
    drafts.add(DepthGauge.of(assembly, jig, lengths));
    jig.ifPresent(made -> drafts.addAll(PlateTemplate.of(made, lengths)));
    return List.copyOf(drafts);
  }
}
