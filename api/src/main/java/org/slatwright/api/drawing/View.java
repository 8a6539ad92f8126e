package org.slatwright.api.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One view, table or block on a sheet.
 *
 * @param id unique on its sheet: {@code front}, {@code parts-list}
 * @param title for whoever cannot see the drawing
 * @param scale of a view; empty for tables and text
 * @param figures what it is drawn with, in paper coordinates
 */
public record View(String id, String title, Optional<Scale> scale, List<Figure> figures) {
  public View {
    figures = List.copyOf(figures);
  }
}
