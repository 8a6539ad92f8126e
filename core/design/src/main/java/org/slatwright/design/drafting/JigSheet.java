package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/**
 * A drilling jig in place on an upright, and how to put it together and use it; where its parts
 * have no sheet of their own, they are dimensioned beside it.
 */
final class JigSheet implements SheetDrawing {

  private static final double PAD = 5;

  private final Rack rack;
  private final Jig jig;
  private final String name;
  private final String title;
  private final boolean withParts;

  private JigSheet(Rack rack, Jig jig, String name, String title, boolean withParts) {
    this.rack = rack;
    this.jig = jig;
    this.name = name;
    this.title = title;
    this.withParts = withParts;
  }

  /** The jig whose plates are cut from sheet. */
  static JigSheet ofSheet(Rack rack, Jig jig) {
    return new JigSheet(rack, jig, "drilling-jig", "Drilling jig", false);
  }

  /** The jig from offcuts. */
  static JigSheet ofOffcuts(Rack rack, Jig jig) {
    return new JigSheet(rack, jig, "jig-from-offcuts", "Drilling jig from offcuts", true);
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
    views.add(TitleBlock.of(rack, title, scale, number, count).view(frame));
    String numbered = String.format(Locale.ROOT, "drawings/%02d-%s", number, name);
    return new Sheet(numbered, title, rack.shop().paper(), frame.landscape(), views);
  }

  private BlockRows rows(Scale scale, double width) {
    LengthFormat lengths = rack.lengths();
    Stream<SheetBlock> inPlace = Stream.of(new JigInPlace(rack, jig, lengths, scale));
    Stream<SheetBlock> parts =
        withParts
            ? jig.plates().stream().map(plate -> new PlateDrawing(plate, lengths, scale))
            : Stream.of();
    return BlockRows.of(Stream.concat(inPlace, parts).toList(), width);
  }

  private static List<String> numbered(List<String> steps) {
    return IntStream.range(0, steps.size()).mapToObj(i -> (i + 1) + ". " + steps.get(i)).toList();
  }
}
