package org.slatwright.design.drafting;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.design.drafting.Spans.Span;

/**
 * What becomes of the stretches along a board of which neither a piece nor an offcut is made: one
 * rule for what is drawn, its key, and the sum that is written below.
 *
 * @param kerf width of a cut
 * @param endTrim squared off each end
 */
record Losses(CutBoard board, Length kerf, Length endTrim) {

  /** What no piece may hold, to its full length; pieces lie clear of it. */
  Spans avoided() {
    return Spans.joined(
            board.avoid().stream()
                .map(zone -> new Span(zone.from().nanometres(), zone.to().nanometres()))
                .toList())
        .within(0, length());
  }

  /** What is squared off the ends; not of an offcut as wide as the board, which keeps its end. */
  Spans trimmed() {
    long trim = endTrim.nanometres();
    Spans ends = Spans.of(0, trim).plus(Spans.of(length() - trim, length()));
    Spans kept =
        Spans.joined(
            board.offcuts().stream()
                .filter(offcut -> offcut.width().equals(board.width()))
                .map(Losses::span)
                .toList());
    return ends.minus(avoided()).minus(kept);
  }

  /** What becomes dust: all the rest. Only the parts of a board that is not ripped have one sum. */
  Spans sawn() {
    List<Span> used =
        Stream.concat(
                board.cuts().stream().map(cut -> Span.of(cut.from(), cut.length())),
                board.offcuts().stream().map(Losses::span))
            .toList();
    return Spans.of(0, length()).minus(Spans.joined(used).plus(avoided()).plus(trimmed()));
  }

  private long length() {
    return board.length().nanometres();
  }

  private static Span span(Offcut offcut) {
    return Span.of(offcut.from(), offcut.length());
  }
}
