package org.slatwright.api.drawing;

import java.util.List;

/**
 * The templates of a rack, whole and as printed.
 *
 * @param whole each template in one piece, for a plotter or a copy shop
 * @param pages the same on the maker's paper, cut into tiles where they must be and nested several
 *     to a page; each page carries a check rule in both directions. Printed at 100 %, never fitted
 *     to the page.
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
}
