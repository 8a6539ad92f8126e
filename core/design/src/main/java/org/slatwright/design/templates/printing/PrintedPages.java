package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.drawing.View;

/** Draws pages when all has found its place. */
record PrintedPages(
    Printing printing, PageLayout layout, List<TiledDraft> drafts, List<Nesting.Laid> laid) {

  Templates templates() {
    int count = 1 + laid.stream().mapToInt(Nesting.Laid::page).max().orElse(0);
    return new Templates(
        drafts.stream().map(this::template).toList(),
        IntStream.range(0, count).mapToObj(page -> sheet(page, count)).toList());
  }

  private Template template(TiledDraft tiled) {
    Draft draft = tiled.draft();
    return new Template(
        draft.name(),
        draft.title(),
        draft.use(),
        draft.width(),
        draft.height(),
        draft.figures(),
        tiles(tiled));
  }

  private List<Template.Tile> tiles(TiledDraft tiled) {
    return laid.stream()
        .filter(each -> each.piece() instanceof TilePiece piece && piece.tiled() == tiled)
        .map(each -> ((TilePiece) each.piece()).tile(each))
        .toList();
  }

  private Sheet sheet(int page, int count) {
    String number = Integer.toString(page + 1);
    List<View> views = new ArrayList<>();
    views.add(
        new PageHead(printing.title(), printing.paper().word())
            .view(layout.head(), page + 1, count));
    views.add(new PageChecks(layout, printing.units()).view());
    views.add(map(page));
    laid.stream().filter(each -> each.page() == page).map(this::view).forEach(views::add);
    return new Sheet(
        "templates/page-" + number,
        "Templates, page " + number + " of " + count,
        printing.paper(),
        false,
        views);
  }

  private View view(Nesting.Laid each) {
    return each.piece() instanceof TilePiece tile
        ? tile.view(each, words(tile.tiled()))
        : ((UseCard) each.piece()).view(each.laying());
  }

  private View map(int page) {
    List<PageMap.Entry> entries =
        laid.stream()
            .filter(each -> each.page() == page && each.piece() instanceof TilePiece)
            .map(each -> entry((TilePiece) each.piece(), each))
            .toList();
    return new PageMap(layout.map(), layout.paper()).view(entries);
  }

  private PageMap.Entry entry(TilePiece piece, Nesting.Laid each) {
    return new PageMap.Entry(piece.tile(each), piece.legend(words(piece.tiled())));
  }

  private TileWords words(TiledDraft tiled) {
    List<Template.Tile> tiles = tiles(tiled);
    int columns = tiled.grid().columns().size();
    return new TileWords(tiled, (row, column) -> tiles.get(row * columns + column).page() + 1);
  }
}
