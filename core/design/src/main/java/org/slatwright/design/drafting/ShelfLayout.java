package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.drafting.BlockSheet.Heading;
import org.slatwright.design.sizing.Rack;

/**
 * Shelves from above: each that differs is drawn, or, where there are too many, told in a table;
 * and how slats are fastened to each kind of frame, larger.
 */
final class ShelfLayout {

  static final String NAME = "shelf-layout";
  static final String TITLE = "Shelf layout";

  private static final int MOST_DRAWN = 12;

  /** Beside the frames of a shelf that is broken, in mm on paper. */
  private static final double ENDS = 14;

  private final Rack rack;
  private final LengthFormat lengths;
  private final List<Fastener> fasteners;
  private final ShelfUnit first;
  private final List<ShelfUnit> units;
  private final List<SheetBlock> others;
  private final List<String> notes;

  private ShelfLayout(Rack rack, Assembly assembly) {
    this.rack = rack;
    this.lengths = rack.lengths();
    this.fasteners = assembly.fasteners();
    this.first = ShelfUnit.lowest(assembly);
    this.units = ShelfUnit.of(assembly);
    this.others = Stream.concat(bearings().stream(), tables().stream()).toList();
    this.notes = ShelfNotes.of(rack, lengths);
  }

  /** As many sheets as they take. */
  static List<SheetDrawing> of(Rack rack, Assembly assembly) {
    return new ShelfLayout(rack, assembly).sheets();
  }

  private List<SheetDrawing> sheets() {
    return Stream.of(false, true)
        .flatMap(
            lying ->
                Stream.of(false, true)
                    .map(broken -> new Layout(new SheetFrame(rack.shop().paper(), lying), broken)))
        .min(
            Comparator.comparing((Layout layout) -> !layout.isEasyToRead())
                .thenComparing(layout -> layout.sheets().size())
                .thenComparing(layout -> layout.broken)
                .thenComparing(layout -> layout.scale.real()))
        .orElseThrow()
        .sheets();
  }

  private List<ShelfUnit> drawn() {
    return units.size() > MOST_DRAWN ? units.subList(0, 1) : units;
  }

  /** Left, inner and right frame, all at the largest scale at which each is small enough. */
  private List<BearingDrawing> bearings() {
    return bearings(
        Scales.largest(
            rack.units(),
            candidate -> bearings(candidate).stream().allMatch(BearingDrawing::isSmall)));
  }

  private List<BearingDrawing> bearings(Scale scale) {
    int last = first.frames().size() - 1;
    List<BearingDrawing> drawings = new ArrayList<>();
    drawings.add(bearing(0, "Left frame", scale));
    if (last > 1) {
      drawings.add(bearing(1, last == 2 ? "Middle frame" : "Inner frames", scale));
    }
    drawings.add(bearing(last, "Right frame", scale));
    return drawings;
  }

  private BearingDrawing bearing(int frame, String title, Scale scale) {
    return new BearingDrawing(first, frame, title, lengths, scale);
  }

  private List<SheetBlock> tables() {
    List<SheetBlock> tables = new ArrayList<>();
    ShelfTables.widths(units, fasteners, lengths).ifPresent(tables::add);
    if (units.size() > MOST_DRAWN) {
      tables.addAll(ShelfTables.rows(units, lengths));
    }
    return tables;
  }

  /** All shelves at one scale, on sheets that stand or lie. */
  private final class Layout {

    private final SheetFrame frame;
    private final boolean broken;
    private final Scale scale;
    private final List<SheetDrawing> sheets;

    Layout(SheetFrame frame, boolean broken) {
      this.frame = frame;
      this.broken = broken;
      this.scale = scale();
      this.sheets = sheets(scale);
    }

    List<SheetDrawing> sheets() {
      return sheets;
    }

    boolean isEasyToRead() {
      return fits(scale) && isEasyToRead(scale);
    }

    /**
     * The largest at which one sheet holds all, where that can be read; else the smallest that can;
     * else the largest at which each has room.
     */
    private Scale scale() {
      Scale one =
          Scales.largest(
              rack.units(), candidate -> fits(candidate) && sheets(candidate).size() == 1);
      Scale read = Scales.smallest(rack.units(), this::isEasyToRead);
      if (fits(one) && isEasyToRead(one)) {
        return one;
      }
      return fits(read) ? read : Scales.largest(rack.units(), this::fits);
    }

    private boolean isEasyToRead(Scale candidate) {
      return drawings(candidate).stream().allMatch(ShelfDrawing::isEasyToRead);
    }

    private boolean fits(Scale candidate) {
      return BlockSheet.holdsEach(frame, notes, blocks(candidate));
    }

    private List<SheetDrawing> sheets(Scale candidate) {
      Heading heading = new Heading(NAME, TITLE, "as stated");
      return BlockSheet.of(rack, heading, frame, notes, blocks(candidate));
    }

    private List<SheetBlock> blocks(Scale candidate) {
      return Stream.<SheetBlock>concat(drawings(candidate).stream(), others.stream()).toList();
    }

    private List<ShelfDrawing> drawings(Scale candidate) {
      return drawn().stream().map(unit -> drawing(unit, candidate)).toList();
    }

    private ShelfDrawing drawing(ShelfUnit unit, Scale candidate) {
      Shown shown =
          broken
              ? ShelfDrawing.broken(unit, Length.roundedMm(ENDS / candidate.factor()))
              : ShelfDrawing.whole(unit);
      return new ShelfDrawing(unit, lengths, candidate, shown);
    }
  }
}
