package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;

/**
 * Lays drafts out on paper.
 *
 * @param title of the rack
 * @param units that its maker measures in
 * @param margin at every edge of the paper, where nothing is printed; at most 1 in
 */
public record Printing(String title, Unit units, Paper paper, Length margin) {

  /** The drafts, whole and on as few pages as may be. */
  public Templates print(List<Draft> drafts) {
    if (drafts.isEmpty()) {
      return Templates.NONE;
    }
    PageLayout layout = PageLayout.of(paper, margin.inMm());
    double mostWidth = layout.area().width() - TileLabel.MOST_MM;
    double mostHeight = layout.area().height();
    List<TiledDraft> tiled =
        drafts.stream().map(draft -> new TiledDraft(draft, mostWidth, mostHeight)).toList();
    List<Piece> pieces = new ArrayList<>();
    tiled.forEach(draft -> pieces.addAll(draft.pieces()));
    tiled.forEach(draft -> UseCard.of(draft, new LengthFormat(units)).ifPresent(pieces::add));
    List<Nesting.Laid> laid = new Nesting(layout.area()).of(pieces);
    return new PrintedPages(this, layout, tiled, laid).templates();
  }
}
