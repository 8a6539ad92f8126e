package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/** Every different plate of the drilling jig, dimensioned. */
final class JigPlatesSheet implements SheetDrawing {

  static final String NAME = "jig-plates";
  static final String TITLE = "Jig plates";

  private static final double PAD = 2;

  private final Rack rack;
  private final Jig jig;

  JigPlatesSheet(Rack rack, Jig jig) {
    this.rack = rack;
    this.jig = jig;
  }

  @Override
  public Sheet sheet(int number, int count) {
    Layout layout = FittedLayout.larger(rack.shop().paper(), Layout::new);
    List<View> views = new ArrayList<>();
    views.add(layout.frame.view());
    views.addAll(layout.plates());
    views.add(TitleBlock.of(rack, TITLE, layout.scale, number, count).view(layout.frame));
    String name = String.format(Locale.ROOT, "drawings/%02d-%s", number, NAME);
    return new Sheet(name, TITLE, rack.shop().paper(), layout.frame.landscape(), views);
  }

  private List<SheetBlock> blocks(Scale scale) {
    LengthFormat lengths = rack.lengths();
    return jig.plates().stream()
        .<SheetBlock>map(plate -> new PlateDrawing(plate, lengths, scale))
        .toList();
  }

  /** The largest scale at which every plate has room on that frame. */
  private final class Layout implements FittedLayout {

    private final SheetFrame frame;
    private final Scale scale;

    Layout(SheetFrame frame) {
      this.frame = frame;
      this.scale =
          Scales.largest(rack.units(), candidate -> rows(candidate).fits(width(), height()));
    }

    @Override
    public Scale scale() {
      return scale;
    }

    List<View> plates() {
      return rows(scale).views(frame.left() + PAD, bottom(), width(), height());
    }

    private BlockRows rows(Scale candidate) {
      return BlockRows.of(blocks(candidate), width());
    }

    private double width() {
      return frame.width() - 2 * PAD;
    }

    private double bottom() {
      return frame.bottom() + TitleBlock.HEIGHT + PAD;
    }

    private double height() {
      return frame.top() - bottom() - PAD;
    }
  }
}
