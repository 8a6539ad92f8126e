package org.slatwright.api.drawing;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/**
 * The templates of a rack, whole and as printed.
 *
 * @param whole each template in one piece, for a plotter or a copy shop
 * @param pages the same on the maker's paper, cut into tiles where they must be and nested several
 *     to a page; each page carries a check rule in both directions, {@link #checkRule} long.
 *     Printed at 100 %, never fitted to the page.
 */
public record Templates(List<Template> whole, List<Sheet> pages) {

  /** Of a plan that has none. */
  public static final Templates NONE = new Templates(List.of(), List.of());

  public Templates {
    whole = List.copyOf(whole);
    pages = List.copyOf(pages);
    for (Template template : whole) {
      for (Template.Tile tile : template.tiles()) {
        if (tile.page() < 0 || tile.page() >= pages.size()) {
          throw new IllegalArgumentException(
              template.name() + " has a tile on page " + tile.page() + " of " + pages.size());
        }
      }
    }
  }

  /** What both check rules on a page measure when it is printed true, in a plan of that unit. */
  public static Length checkRule(Unit unit) {
    return unit.metricOrInch(Length.mm(150), Length.inches(6, 1));
  }
}
