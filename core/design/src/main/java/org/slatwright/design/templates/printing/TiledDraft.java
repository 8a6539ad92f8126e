package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;

/** A draft and how it is cut into tiles. */
final class TiledDraft {

  private final Draft draft;
  private final Grid grid;
  private final List<Figure> shown;
  private final List<Seam> seams;
  private final List<List<Figure>> marks;

  /**
   * @param mostWidth of an upright tile, in mm
   * @param mostHeight of an upright tile, in mm
   */
  TiledDraft(Draft draft, double mostWidth, double mostHeight) {
    this.draft = draft;
    this.grid = Grid.of(draft, mostWidth, mostHeight);
    this.shown = UnsplitTexts.on(grid).of(draft.figures());
    this.seams = Seam.of(grid);
    SeamMarks maker = new SeamMarks(Leaves.of(shown).toList());
    this.marks = seams.stream().map(maker::of).toList();
  }

  Draft draft() {
    return draft;
  }

  Grid grid() {
    return grid;
  }

  List<Seam> seams() {
    return seams;
  }

  /** Its tiles, by row from the top, then by column from the left. */
  List<TilePiece> pieces() {
    return IntStream.range(0, grid.size())
        .mapToObj(i -> new TilePiece(this, i / grid.columns().size(), i % grid.columns().size()))
        .toList();
  }

  /** What a tile shows of the draft, in mm on the draft. */
  List<Figure> figures(int row, int column) {
    return new Clip(grid.window(row, column)).of(shown);
  }

  /** What joins a tile to its neighbours, in mm on the draft. */
  List<Figure> marks(int row, int column) {
    List<Figure> all = new ArrayList<>();
    for (int i = 0; i < seams.size(); i++) {
      Seam seam = seams.get(i);
      if (seam.isBefore(row, column)) {
        all.add(seam.trimLine());
      }
      if (seam.isBefore(row, column) || seam.isAfter(row, column)) {
        all.addAll(new Clip(grid.window(row, column)).of(marks.get(i)));
      }
    }
    return all;
  }
}
