package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.design.sizing.Rack;

/**
 * The general arrangement: front, side and top view with their dimension chains, notes, parts list
 * and title block on one sheet, upright or lying, whichever lets the views be larger.
 */
final class GeneralArrangement implements SheetDrawing {

  static final String NAME = "drawings/01-general-arrangement";
  static final String TITLE = "General arrangement";

  private final Rack rack;
  private final Assembly assembly;
  private final List<String> notes;

  /**
   * Of a rack.
   *
   * @param found what to know before all the notes, if anything
   */
  GeneralArrangement(Rack rack, Assembly assembly, Optional<String> found) {
    this.rack = rack;
    this.assembly = assembly;
    this.notes = new ArrayList<>(found.stream().toList());
    notes.addAll(Notes.of(rack, assembly, rack.lengths()));
  }

  @Override
  public Sheet sheet(int number, int count) {
    Layout layout = FittedLayout.larger(rack.shop().paper(), Layout::new);
    List<View> views = new ArrayList<>();
    views.add(layout.frame.view());
    views.addAll(layout.views());
    views.addAll(layout.foot.views(TitleBlock.of(rack, TITLE, layout.scale, number, count)));
    return new Sheet(NAME, TITLE, rack.shop().paper(), layout.frame.landscape(), views);
  }

  /** The largest scale at which the views have room on that frame. */
  private final class Layout implements FittedLayout {

    private final SheetFrame frame;
    private final SheetFoot foot;
    private final Scale scale;

    Layout(SheetFrame frame) {
      LengthFormat lengths = rack.lengths();
      this.frame = frame;
      this.foot = new SheetFoot(frame, room -> PartsList.table(assembly, lengths, room), notes);
      this.scale = Scales.largest(rack.units(), this::fits);
    }

    private boolean fits(Scale candidate) {
      ThreeViews views = new ThreeViews(rack, assembly, candidate);
      return views.width() <= frame.width() && views.height() <= foot.roomAbove();
    }

    @Override
    public Scale scale() {
      return scale;
    }

    List<View> views() {
      return new ThreeViews(rack, assembly, scale)
          .views(new PaperBox(frame.left(), foot.top(), frame.right(), frame.top()));
    }
  }
}
