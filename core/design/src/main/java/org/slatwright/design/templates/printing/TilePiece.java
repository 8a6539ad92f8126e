package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.View;
import org.slatwright.design.drafting.PaperBox;

/** One tile of a draft, with the label beside it that says which it is. */
final class TilePiece implements Piece {

  private final TiledDraft tiled;
  private final int row;
  private final int column;
  private final PaperBox window;
  private final TileLabel label;

  TilePiece(TiledDraft tiled, int row, int column) {
    this.tiled = tiled;
    this.row = row;
    this.column = column;
    this.window = tiled.grid().window(row, column);
    this.label =
        TileLabel.beside(window.width(), window.height(), words(TileWords.longest(tiled)).strip());
  }

  @Override
  public double width() {
    return label.upright()
        ? window.width() + label.thickness()
        : Math.max(window.width(), label.length());
  }

  @Override
  public double height() {
    return label.upright()
        ? Math.max(window.height(), label.length())
        : window.height() + label.thickness();
  }

  TiledDraft tiled() {
    return tiled;
  }

  /** Where the tile lies when the piece is laid so. */
  Template.Tile tile(Nesting.Laid laid) {
    PaperPoint corner = new PaperPoint(label.upright() ? label.thickness() : 0, 0);
    return new Template.Tile(
        laid.page(),
        row,
        column,
        new PaperPoint(window.left(), window.bottom()),
        window.width(),
        window.height(),
        laid.laying().point(corner),
        laid.laying().turned());
  }

  /** As it lies on the page. */
  View view(Nesting.Laid laid, TileWords words) {
    Template.Tile tile = tile(laid);
    String id = TileWords.file(tiled.draft()) + "-" + (row + 1) + "-" + (column + 1);
    Laying onPage = new Laying(tile.from(), tile.at(), tile.turned(), id + "-");
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure.Cluster(
            id + "-template", words.name(row, column), onPage.figures(tiled.figures(row, column))));
    List<Figure> marks = onPage.figures(tiled.marks(row, column));
    if (!marks.isEmpty()) {
      figures.add(new Figure.Cluster(id + "-marks", "marks to join it by", marks));
    }
    figures.addAll(
        laid.laying().figures(label.figures(words(words), width(), height(), tile.turned())));
    return new View(id, words.name(row, column), Optional.of(new Scale(1, 1)), figures);
  }

  /** For the legend of the page: which it is, and where its neighbours are. */
  List<String> legend(TileWords words) {
    String neighbours = words.neighbours(row, column);
    String name = words.name(row, column);
    return neighbours.isEmpty() ? List.of(name) : List.of(name, neighbours);
  }

  private String words(TileWords words) {
    return words.name(row, column) + ". " + words.joining(row, column);
  }
}
