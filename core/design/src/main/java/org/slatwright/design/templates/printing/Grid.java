package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.slatwright.design.drafting.PaperBox;

/**
 * How a draft is cut into tiles, in rows and columns that go all through it.
 *
 * @param height of the draft, in mm
 * @param rows from its upper edge down
 * @param columns from its left edge to the right
 */
record Grid(double height, List<Stretch> rows, List<Stretch> columns) {

  /**
   * As few tiles as may be, each with room on the paper upright or on its side.
   *
   * @param mostWidth of an upright tile, in mm
   * @param mostHeight of an upright tile, in mm
   */
  static Grid of(Draft draft, double mostWidth, double mostHeight) {
    Grid upright = cut(draft, mostWidth, mostHeight);
    Grid onItsSide = cut(draft, mostHeight, mostWidth);
    return onItsSide.size() < upright.size() ? onItsSide : upright;
  }

  private static Grid cut(Draft draft, double mostWidth, double mostHeight) {
    double height = draft.height().inMm();
    List<Stretch> rows =
        Cuts.of(
            height,
            mostHeight,
            discs(draft, disc -> height - disc.centre().y()),
            texts(draft, box -> new Stretch(height - box.top(), height - box.bottom())));
    List<Stretch> columns =
        Cuts.of(
            draft.width().inMm(),
            mostWidth,
            discs(draft, disc -> disc.centre().x()),
            texts(draft, box -> new Stretch(box.left(), box.right())));
    return new Grid(height, rows, columns);
  }

  private static List<Stretch> discs(Draft draft, ToDoubleFunction<Draft.Disc> centre) {
    return draft.whole().stream()
        .map(
            disc ->
                new Stretch(
                    centre.applyAsDouble(disc) - disc.radiusMm(),
                    centre.applyAsDouble(disc) + disc.radiusMm()))
        .toList();
  }

  private static List<Stretch> texts(Draft draft, Function<PaperBox, Stretch> along) {
    return Leaves.texts(draft.figures()).map(TextRoom::of).map(along).toList();
  }

  int size() {
    return rows.size() * columns.size();
  }

  /** What a tile shows, on the template. */
  PaperBox window(int row, int column) {
    Stretch down = rows.get(row);
    Stretch right = columns.get(column);
    return new PaperBox(right.from(), height - down.to(), right.to(), height - down.from());
  }

  /** What of a tile is still seen when those after it lie over it. */
  PaperBox seen(int row, int column) {
    PaperBox window = window(row, column);
    boolean covered = column + 1 < columns.size();
    double right = covered ? columns.get(column + 1).from() : window.right();
    double bottom = row + 1 < rows.size() ? window(row + 1, column).top() : window.bottom();
    return new PaperBox(window.left(), bottom, right, window.top());
  }
}
