package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.sizing.Rack;

/** One joint in section, full size where the paper allows. */
final class JointSheet implements SheetDrawing {

  private static final String TITLE = "Joint";
  private static final double PAD = 4;

  private final Rack rack;
  private final JointShown joint;
  private final LengthFormat lengths;

  JointSheet(Rack rack, Assembly assembly) {
    this.rack = rack;
    this.joint = JointShown.of(assembly);
    this.lengths = rack.lengths();
  }

  @Override
  public Sheet sheet(int number, int count) {
    Layout layout = FittedLayout.larger(rack.shop().paper(), Layout::new);
    List<View> views = new ArrayList<>();
    views.add(layout.frame.view());
    views.addAll(layout.views());
    views.add(TitleBlock.of(rack, TITLE, layout.scale, number, count).view(layout.frame));
    String name = String.format(Locale.ROOT, "drawings/%02d-joint", number);
    return new Sheet(name, TITLE, rack.shop().paper(), layout.frame.landscape(), views);
  }

  private final class Layout implements FittedLayout {

    private final SheetFrame frame;
    private final Columns notes;
    private final double bottom;
    private final double width;
    private final double height;
    private final Scale scale;

    Layout(SheetFrame frame) {
      this.frame = frame;
      this.width = frame.width() - 2 * PAD;
      this.notes = new Columns("Notes", notes(), width);
      this.bottom = frame.bottom() + TitleBlock.HEIGHT + PAD + notes.height();
      this.height = frame.top() - PAD - bottom;
      this.scale = Scales.largest(rack.units(), candidate -> rows(candidate).fits(width, height));
    }

    @Override
    public Scale scale() {
      return scale;
    }

    private BlockRows rows(Scale candidate) {
      return BlockRows.of(
          List.of(
              new JointLengthwise(joint, lengths, candidate),
              new JointAcross(joint, lengths, candidate)),
          width);
    }

    List<View> views() {
      List<View> views =
          new ArrayList<>(rows(scale).views(frame.left() + PAD, bottom, width, height));
      views.add(
          new View("notes", "Notes", Optional.empty(), notes.figures(frame.left() + PAD, bottom)));
      return views;
    }
  }

  private List<String> notes() {
    Length room = joint.holeDepth().minus(joint.embedment());
    String dowels = joint.axes().size() == 1 ? "the dowel" : "both dowels";
    return List.of(
        "The rear joint of the left frame on the lowest shelf, from the left; all joints are alike.",
        "Glue the end of the rail to the upright, and "
            + dowels
            + " (D) over the whole length, "
            + lengths.withUnit(joint.dowelLength())
            + ". The hole in the rail (R) is "
            + lengths.withUnit(joint.holeDepth())
            + " deep: "
            + lengths.withUnit(room)
            + " behind the dowel are for glue and trapped air.",
        fixing());
  }

  private String fixing() {
    Fastener fastener = joint.fastener();
    String kind = fastener.kind().word();
    int count = rack.fixing().perEnd();
    return (count == 1 ? "1 " + kind : count + " " + kind + "s")
        + " "
        + lengths.section(fastener.diameter(), fastener.length())
        + " through each slat, beside the dowel, "
        + lengths.withUnit(joint.rail().high().z().minus(joint.tip()))
        + " deep in the rail.";
  }
}
