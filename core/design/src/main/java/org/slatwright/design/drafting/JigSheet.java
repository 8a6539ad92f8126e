package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/**
 * The drilling jig on one sheet: every plate dimensioned, and how to put it together and use it.
 */
final class JigSheet {

  static final String NAME = "drawings/02-drilling-jig";
  static final String TITLE = "Drilling jig";

  private static final double HEADING = 3.5;
  private static final double LETTERING = 2.5;
  private static final double PAD = 4;
  private static final double BETWEEN = 1.2;

  private final Rack rack;
  private final Jig jig;
  private final LengthFormat lengths;

  JigSheet(Rack rack, Jig jig) {
    this.rack = rack;
    this.jig = jig;
    this.lengths = new LengthFormat(rack.units());
  }

  /** The sheet, as number {@code number} of {@code count}. */
  Sheet sheet(int number, int count) {
    Layout upright = layout(new SheetFrame(rack.paper(), false));
    Layout lying = layout(new SheetFrame(rack.paper(), true));
    boolean landscape = lying.scale().factor() > upright.scale().factor();
    return sheet(landscape ? lying : upright, number, count);
  }

  private record Layout(SheetFrame frame, Scale scale, List<List<PlateDrawing>> rows) {}

  private Layout layout(SheetFrame frame) {
    double room = frame.top() - useTop(frame) - 2 * PAD;
    Scale scale =
        Scales.largest(
            rack.units(),
            candidate ->
                fits(rows(frame, candidate), frame) && height(rows(frame, candidate)) <= room);
    return new Layout(frame, scale, rows(frame, scale));
  }

  private static boolean fits(List<List<PlateDrawing>> rows, SheetFrame frame) {
    return rows.stream().allMatch(row -> width(row) <= frame.width() - 2 * PAD);
  }

  private List<List<PlateDrawing>> rows(SheetFrame frame, Scale scale) {
    double room = frame.width() - 2 * PAD;
    List<List<PlateDrawing>> rows = new ArrayList<>();
    for (var plate : jig.plates()) {
      PlateDrawing drawing = new PlateDrawing(plate, lengths, scale);
      List<PlateDrawing> last = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
      if (last.isEmpty() || width(last) + drawing.width() > room) {
        rows.add(new ArrayList<>(List.of(drawing)));
      } else {
        last.add(drawing);
      }
    }
    return rows;
  }

  private static double width(List<PlateDrawing> row) {
    return row.stream().mapToDouble(PlateDrawing::width).sum();
  }

  private static double height(List<List<PlateDrawing>> rows) {
    return rows.stream().mapToDouble(JigSheet::rowHeight).sum();
  }

  private static double rowHeight(List<PlateDrawing> row) {
    return row.stream().mapToDouble(PlateDrawing::height).max().orElse(0);
  }

  private Sheet sheet(Layout layout, int number, int count) {
    SheetFrame frame = layout.frame();
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    views.addAll(plates(layout));
    views.add(new View("use", "How to use it", Optional.empty(), use(frame)));
    views.add(TitleBlock.of(rack, TITLE, layout.scale(), number, count).view(frame));
    return new Sheet(NAME, TITLE, rack.paper(), frame.landscape(), views);
  }

  private List<View> plates(Layout layout) {
    List<View> views = new ArrayList<>();
    SheetFrame frame = layout.frame();
    double spare = frame.top() - useTop(frame) - 2 * PAD - height(layout.rows());
    double gap = Math.max(0, spare / (layout.rows().size() + 1));
    double top = frame.top() - PAD;
    for (List<PlateDrawing> row : layout.rows()) {
      top -= gap + rowHeight(row);
      double between = Math.max(0, (frame.width() - 2 * PAD - width(row)) / (row.size() + 1));
      double left = frame.left() + PAD;
      for (PlateDrawing drawing : row) {
        left += between;
        views.add(
            new View(
                "plate-" + drawing.plate().mark(),
                drawing.plate().mark() + " " + drawing.plate().name(),
                Optional.of(layout.scale()),
                drawing.figures(left, top)));
        left += drawing.width();
      }
    }
    return views;
  }

  /** Above the title block, over the whole width. */
  private List<Figure> use(SheetFrame frame) {
    List<Figure> figures = new ArrayList<>();
    double y = useTop(frame) - PAD;
    double left = frame.left() + PAD;
    figures.add(Paragraph.text(left, y - HEADING, HEADING, "How to use it", Figure.Align.START));
    y -= HEADING * Paragraph.LINE_SPACING;
    for (List<String> lines : useLines(frame)) {
      figures.addAll(Paragraph.draw(lines, left, y, LETTERING));
      y -= Paragraph.heightOf(lines.size(), LETTERING) + BETWEEN;
    }
    return figures;
  }

  private double useTop(SheetFrame frame) {
    double text =
        useLines(frame).stream()
            .mapToDouble(lines -> Paragraph.heightOf(lines.size(), LETTERING) + BETWEEN)
            .sum();
    return frame.bottom() + TitleBlock.HEIGHT + text + HEADING * Paragraph.LINE_SPACING + PAD + 2;
  }

  private List<List<String>> useLines(SheetFrame frame) {
    double width = frame.width() - 2 * PAD;
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < jig.use().size(); i++) {
      lines.add(Paragraph.wrap((i + 1) + ". " + jig.use().get(i), LETTERING, width));
    }
    return lines;
  }
}
