package org.slatwright.design.drafting;

import java.util.function.Function;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Scale;

/** What a sheet holds, at the largest scale at which its frame has room for it. */
interface FittedLayout {

  Scale scale();

  /** On the upright or the lying sheet, whichever lets it be larger; upright when neither does. */
  static <L extends FittedLayout> L larger(Paper paper, Function<SheetFrame, L> layout) {
    L upright = layout.apply(new SheetFrame(paper, false));
    L lying = layout.apply(new SheetFrame(paper, true));
    return lying.scale().factor() > upright.scale().factor() ? lying : upright;
  }
}
