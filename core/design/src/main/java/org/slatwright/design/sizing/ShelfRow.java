package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.BoardChoice;

/**
 * A row of slats as it lies: front margin + Σ widths + (count - 1) × gap + back margin = rail
 * length.
 *
 * @param shelf counted from the floor, 0 is the lowest
 * @param run counted from the left, 0 is the first, and the only one where slats run through
 * @param length of each slat
 * @param slats from the front back
 * @param gap between two of them; zero when there is one
 * @param frontMargin between the front uprights and the first slat
 * @param backMargin between the last slat and the rear uprights
 */
public record ShelfRow(
    int shelf,
    int run,
    Length length,
    List<Slat> slats,
    Length gap,
    Length frontMargin,
    Length backMargin) {

  public ShelfRow {
    slats = List.copyOf(slats);
  }

  /** The section of a slat. */
  public record Slat(Length width, Length thickness) {}

  /** From the rail's front end to the front edge of each slat. */
  public List<Length> fronts() {
    List<Length> fronts = new ArrayList<>();
    Length at = frontMargin;
    for (Slat slat : slats) {
      fronts.add(at);
      at = at.plus(slat.width()).plus(gap);
    }
    return List.copyOf(fronts);
  }

  /** Of slats that are all alike. */
  static ShelfRow even(int shelf, int run, Rack.SlatRow row) {
    return new ShelfRow(
        shelf,
        run,
        row.lengths().get(run),
        Collections.nCopies(row.count(), new Slat(row.width(), row.thickness())),
        row.gap(),
        row.frontMargin(),
        row.backMargin());
  }

  /** Of slats as wide and thick as their boards. */
  static ShelfRow chosen(BoardChoice.Row row) {
    return new ShelfRow(
        row.need().shelf(),
        row.need().run(),
        row.need().length(),
        row.slats().stream().map(slat -> new Slat(slat.width(), slat.thickness())).toList(),
        row.gap(),
        row.frontMargin(),
        row.backMargin());
  }
}
