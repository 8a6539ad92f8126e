package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.sizing.Rack;

/**
 * The title block, 180 mm wide (ISO 7200), with room to sign by hand: a plan has no clock, so the
 * date is the maker's to write.
 *
 * @param rack the rack's title
 * @param drawing what the sheet shows
 * @param scale of its views, or a word where there are none
 * @param units that its numbers are in
 * @param paper its size
 * @param number which sheet of how many
 * @param angle arrangement of the views
 */
record TitleBlock(
    String rack,
    String drawing,
    String scale,
    String units,
    String paper,
    String number,
    Angle angle) {

  private static final double WIDTH = 180;
  private static final double LEAST_BESIDE = 40;
  static final double HEIGHT = 27;

  private static final double ROW = 9;
  private static final double CAPTION = 1.8;
  private static final double PAD = 1.5;

  /** For sheet {@code number} of {@code count}. */
  static TitleBlock of(Rack rack, String drawing, Scale scale, int number, int count) {
    return of(rack, drawing, scale.toString(), number, count);
  }

  /** For a sheet of text alone. */
  static TitleBlock ofText(Rack rack, String drawing, int number, int count) {
    return of(rack, drawing, "none", number, count);
  }

  /** The same, with the scale in words. */
  static TitleBlock of(Rack rack, String drawing, String scale, int number, int count) {
    return new TitleBlock(
        rack.title(),
        drawing,
        scale,
        rack.units() == Unit.MM ? "millimetres" : "inches",
        rack.shop().paper().word(),
        number + " of " + count,
        Angle.of(rack.units()));
  }

  /** In the lower right corner of the frame. */
  View view(SheetFrame frame) {
    return new View(
        "title-block",
        "Title block",
        Optional.empty(),
        figures(frame.right() - width(frame), frame.bottom(), width(frame)));
  }

  /** As wide as the standard says; over the whole foot of a sheet that is hardly wider. */
  static double width(SheetFrame frame) {
    return frame.width() < WIDTH + LEAST_BESIDE ? frame.width() : WIDTH;
  }

  private List<Figure> figures(double left, double bottom, double width) {
    double top = bottom + HEIGHT;
    double right = left + width;
    double titleWidth = width - 88;
    double middle = left + titleWidth;
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.box(left, bottom, right, top, LineKind.VISIBLE));
    titleCell(figures, left, top - 2 * ROW, titleWidth);
    cell(figures, middle, top - ROW, 62, "Drawing", drawing);
    symbolCell(figures, right - 26, top - ROW, 26);
    cell(figures, middle, top - 2 * ROW, 30, "Scale", scale);
    cell(figures, middle + 30, top - 2 * ROW, 32, "Dimensions in", units);
    cell(figures, right - 26, top - 2 * ROW, 26, "Paper", paper);
    cell(figures, left, bottom, titleWidth / 2, "Drawn by", "");
    cell(figures, left + titleWidth / 2, bottom, titleWidth / 2, "Checked by", "");
    cell(figures, middle, bottom, 30, "Date", "");
    cell(figures, middle + 30, bottom, 32, "Revision", "");
    cell(figures, right - 26, bottom, 26, "Sheet", number);
    return figures;
  }

  private void titleCell(List<Figure> figures, double left, double bottom, double width) {
    double high = 2 * ROW;
    figures.add(Strokes.box(left, bottom, left + width, bottom + high, LineKind.THIN));
    caption(figures, left, bottom + high, "Title");
    double room = width - 2 * PAD;
    double below = bottom + high - PAD - CAPTION - 1.6;
    double height = titleHeight(room);
    int most = height < 3 ? 3 : 2;
    figures.addAll(
        Paragraph.draw(Paragraph.wrap(rack, height, room, most), left + PAD, below, height));
  }

  /**
   * The largest lettering of ISO 3098 in which the title fits: on one line, on two, or on three.
   */
  private double titleHeight(double room) {
    if (Paragraph.wrap(rack, 5, room).size() == 1) {
      return 5;
    }
    return Paragraph.wrap(rack, 3.5, room).size() <= 2 ? 3.5 : 2.5;
  }

  private void symbolCell(List<Figure> figures, double left, double bottom, double width) {
    figures.add(Strokes.box(left, bottom, left + width, bottom + ROW, LineKind.THIN));
    caption(figures, left, bottom + ROW, angle.words());
    figures.addAll(angle.symbol(left + width - 7.5, bottom + 3.2));
  }

  private static void cell(
      List<Figure> figures,
      double left,
      double bottom,
      double width,
      String caption,
      String value) {
    figures.add(Strokes.box(left, bottom, left + width, bottom + ROW, LineKind.THIN));
    caption(figures, left, bottom + ROW, caption);
    if (!value.isEmpty()) {
      String text = Paragraph.cut(value, 3.5, width - 2 * PAD);
      figures.add(Paragraph.text(left + PAD, bottom + 1.6, 3.5, text, Figure.Align.START));
    }
  }

  private static void caption(List<Figure> figures, double left, double top, String caption) {
    figures.add(
        Paragraph.text(left + PAD, top - CAPTION - 0.9, CAPTION, caption, Figure.Align.START));
  }
}
