package org.slatwright.api.drawing;

import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * A drawing at full scale, to be laid, folded or glued on the work.
 *
 * @param name its output name: {@code templates/U-drilling}
 * @param title what it is for
 * @param use how to use it, one sentence a step
 * @param width to the right, real size
 * @param height up, real size; may be far more than a sheet holds
 * @param figures in mm from its lower left corner, none of them outside {@code width} × {@code
 *     height}
 * @param tiles where it is printed, by row from the top, then by column from the left; together
 *     they show all of it
 */
public record Template(
    String name,
    String title,
    List<String> use,
    Length width,
    Length height,
    List<Figure> figures,
    List<Tile> tiles) {

  public Template {
    use = List.copyOf(use);
    figures = List.copyOf(figures);
    tiles = List.copyOf(tiles);
  }

  /**
   * The part of a template that is printed in one place. Tiles that are next to each other show the
   * strip in which they overlap twice.
   *
   * @param page which of {@link Templates#pages()}, from 0
   * @param row from the top, from 0
   * @param column from the left, from 0
   * @param from the lower left corner of what it shows, in mm on the template
   * @param widthMm of what it shows, on the template
   * @param heightMm of what it shows, on the template
   * @param at where {@code from} lies on the page
   * @param turned whether it lies on the page turned a quarter counter-clockwise about {@code at}
   */
  public record Tile(
      int page,
      int row,
      int column,
      PaperPoint from,
      double widthMm,
      double heightMm,
      PaperPoint at,
      boolean turned) {

    /** Where a point of the template lies on the page. */
    public PaperPoint onPage(PaperPoint point) {
      double right = point.x() - from.x();
      double up = point.y() - from.y();
      return turned ? at.moved(-up, right) : at.moved(right, up);
    }
  }
}
