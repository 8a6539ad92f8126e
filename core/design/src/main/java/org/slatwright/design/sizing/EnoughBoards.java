package org.slatwright.design.sizing;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.sizing.SlatYield.Count;

/**
 * Whether the reclaimed boards give all slats: each board ripped into as many strips as it is wide
 * for, each strip cut clear of its ends and of what must be avoided, a kerf between two pieces.
 */
final class EnoughBoards {

  private final Worksheet sheet;
  private final Length slatWidth;

  EnoughBoards(Worksheet sheet, Length slatWidth) {
    this.sheet = sheet;
    this.slatWidth = slatWidth;
  }

  /**
   * Warns of what is missing. Stock that can be bought to length is taken to be endless.
   *
   * @param lengths of the slats of each bay
   * @param each how many there are of each: slats a shelf, times shelves
   */
  void check(List<Length> lengths, int each) {
    RackFile.SlatStock stock = sheet.file().timber().slats();
    if (stock.boards().isEmpty() || !stock.lengths().isEmpty()) {
      return;
    }
    Length longer = Collections.max(lengths);
    Length shorter = Collections.min(lengths);
    int ofLonger = Collections.frequency(lengths, longer) * each;
    Count needed = new Count(ofLonger, lengths.size() * each - ofLonger);
    SlatYield yield = new SlatYield(longer, shorter, sheet.file().shop().kerf(), needed);
    Count missing = yield.missing(stretches(needed.all()));
    if (missing.all() > 0) {
      sheet.warn(
          "timber.slats.boards",
          "the boards give %s of the %s slats that the rack needs; missing: %s"
              .formatted(
                  needed.all() - missing.all(), needed.all(), spell(missing, longer, shorter)),
          "%s at least %s long and %s wide, or fewer slats.per-shelf"
              .formatted(
                  missing.all() == 1 ? "1 more board" : missing.all() + " more boards",
                  sheet.show(enough(missing, longer, shorter)),
                  sheet.show(slatWidth)));
    }
  }

  private String spell(Count missing, Length longer, Length shorter) {
    String both = missing.longer() > 0 && missing.shorter() > 0 ? " and " : "";
    return spell(missing.longer(), longer) + both + spell(missing.shorter(), shorter);
  }

  private String spell(int count, Length length) {
    return count > 0 ? "%s of %s".formatted(count, sheet.show(length)) : "";
  }

  /** One slat and both ends to square off. */
  private Length enough(Count missing, Length longer, Length shorter) {
    Length slat = missing.longer() > 0 ? longer : shorter;
    return slat.plus(sheet.file().shop().endTrim().times(2));
  }

  /**
   * How many clear stretches there are of each length; no more than {@code most}, which will do.
   */
  private Map<Length, Integer> stretches(int most) {
    Map<Length, Integer> found = new TreeMap<>();
    for (Given<RackFile.Board> given : sheet.file().timber().slats().boards()) {
      RackFile.Board board = given.value();
      long alike = Math.min(most, board.count() * strips(board));
      for (Length stretch : ClearStretches.lengths(board, sheet.file().shop().endTrim())) {
        found.merge(stretch, (int) alike, (a, b) -> Math.min(most, a + b));
      }
    }
    return found;
  }

  private long strips(RackFile.Board board) {
    return Fitting.pieces(board.width(), slatWidth, sheet.file().shop().kerf());
  }
}
