package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/** The drilling jig in place on an upright, and how to put it together and use it. */
final class JigSheet implements SheetDrawing {

  static final String NAME = "drawings/02-drilling-jig";
  static final String TITLE = "Drilling jig";

  private static final double PAD = 5;

  private final Rack rack;
  private final Jig jig;

  JigSheet(Rack rack, Jig jig) {
    this.rack = rack;
    this.jig = jig;
  }

  @Override
  public Sheet sheet(int number, int count) {
    SheetFrame frame = SheetFrame.usual(rack.shop().paper());
    double width = frame.width() - 2 * PAD;
    Columns use = new Columns("How to use it", numbered(jig.use()), width);
    double useTop = frame.bottom() + TitleBlock.HEIGHT + use.height() + 2 * PAD;
    double height = frame.top() - useTop;
    Scale scale =
        Scales.largest(rack.units(), candidate -> rows(candidate, width).fits(width, height));
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    views.addAll(rows(scale, width).views(frame.left() + PAD, useTop, width, height));
    views.add(
        new View(
            "use",
            "How to use it",
            Optional.empty(),
            use.figures(frame.left() + PAD, useTop - PAD)));
    views.add(TitleBlock.of(rack, TITLE, scale, number, count).view(frame));
    return new Sheet(NAME, TITLE, rack.shop().paper(), frame.landscape(), views);
  }

  private BlockRows rows(Scale scale, double width) {
    SheetBlock inPlace = new JigInPlace(rack, jig, new LengthFormat(rack.units()), scale);
    return BlockRows.of(List.of(inPlace), width);
  }

  private static List<String> numbered(List<String> steps) {
    return IntStream.range(0, steps.size()).mapToObj(i -> (i + 1) + ". " + steps.get(i)).toList();
  }
}
