package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Stock;

/**
 * How one timber is cut.
 *
 * @param stock which
 * @param timber in words, as in the cut list: {@code norway spruce, frame stock 44 × 44 mm}
 * @param kerf width of a cut
 * @param endTrim squared off each end of a stock length
 * @param boards every different way a board is cut, in the order to cut them
 * @param settings of the stop block in sequence, one for each length: those of parts, the longest
 *     first, then those that only spare pieces have
 * @param quality how good the plan is, in plain words: {@code proved: no plan costs less than
 *     29.50}
 * @param missing pieces that no board is left for; empty when there is enough
 */
public record TimberCuts(
    Stock stock,
    String timber,
    Length kerf,
    Length endTrim,
    List<CutBoard> boards,
    List<StopSetting> settings,
    String quality,
    List<MissingPieces> missing) {

  public TimberCuts {
    boards = List.copyOf(boards);
    settings = List.copyOf(settings);
    missing = List.copyOf(missing);
  }
}
