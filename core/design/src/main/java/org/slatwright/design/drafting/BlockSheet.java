package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.design.sizing.Rack;

/** A sheet of drawings set in rows, with notes below them. */
final class BlockSheet implements SheetDrawing {

  private static final double PAD = 3;
  private static final double GAP = 4;

  private final Rack rack;
  private final Heading heading;
  private final SheetFrame frame;
  private final Columns notes;
  private final BlockRows rows;

  /**
   * What the title block says.
   *
   * @param name of the sheet, after its number
   * @param scale of its drawings, in words where they differ
   */
  record Heading(String name, String title, String scale) {}

  private BlockSheet(
      Rack rack, Heading heading, SheetFrame frame, Columns notes, List<SheetBlock> blocks) {
    this.rack = rack;
    this.heading = heading;
    this.frame = frame;
    this.notes = notes;
    this.rows = BlockRows.of(blocks, width(frame));
  }

  /** As many sheets as they take, the notes on each. */
  static List<SheetDrawing> of(
      Rack rack, Heading heading, SheetFrame frame, List<String> said, List<SheetBlock> blocks) {
    Columns notes = new Columns("Notes", said, width(frame));
    List<SheetDrawing> sheets = new ArrayList<>();
    List<SheetBlock> here = new ArrayList<>();
    for (SheetBlock block : blocks) {
      List<SheetBlock> more = new ArrayList<>(here);
      more.add(block);
      if (!here.isEmpty() && !new BlockSheet(rack, heading, frame, notes, more).fits()) {
        sheets.add(new BlockSheet(rack, heading, frame, notes, here));
        more = List.of(block);
      }
      here = more;
    }
    sheets.add(new BlockSheet(rack, heading, frame, notes, here));
    return sheets;
  }

  /** Whether each of them has room on a sheet alone. */
  static boolean holdsEach(SheetFrame frame, List<String> said, List<SheetBlock> blocks) {
    Columns notes = new Columns("Notes", said, width(frame));
    return blocks.stream()
        .allMatch(block -> block.width() <= width(frame) && block.height() <= height(frame, notes));
  }

  /** Of the rows, in mm. */
  static double width(SheetFrame frame) {
    return frame.width() - 2 * PAD;
  }

  private boolean fits() {
    return rows.fits(width(frame), height(frame, notes));
  }

  private static double footTop(SheetFrame frame, Columns notes) {
    return frame.bottom() + TitleBlock.HEIGHT + GAP + notes.height();
  }

  private static double height(SheetFrame frame, Columns notes) {
    return frame.top() - PAD - footTop(frame, notes);
  }

  @Override
  public Sheet sheet(int number, int count) {
    double left = frame.left() + PAD;
    double footTop = footTop(frame, notes);
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    views.addAll(rows.views(left, footTop, width(frame), height(frame, notes)));
    views.add(new View("notes", "Notes", Optional.empty(), notes.figures(left, footTop)));
    views.add(TitleBlock.of(rack, heading.title(), heading.scale(), number, count).view(frame));
    String name = String.format(Locale.ROOT, "drawings/%02d-%s", number, heading.name());
    return new Sheet(name, heading.title(), rack.shop().paper(), frame.landscape(), views);
  }
}
