package org.slatwright.design.machining;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;

/**
 * Lines of lettering above an outline, clear of it and of whatever is drawn above them.
 *
 * @param lines from the top down
 */
record LabelBlock(List<String> lines) {

  /** Said wherever something is cut free, or one would have to guess. */
  static final String NOMINAL = "nominal size, no cutter compensation";

  private static final Length CAPITALS = Length.mm(5);
  private static final Length LINE_PITCH = Length.mm(8);

  /** Under the last baseline and over the first line, so that no descender touches an outline. */
  private static final Length MARGIN = Length.mm(4);

  LabelBlock {
    lines = List.copyOf(lines);
  }

  /** The lines, starting at the left edge, above an outline whose top lies at {@code top}. */
  List<Pattern.Label> above(Length top) {
    return IntStream.range(0, lines.size())
        .mapToObj(i -> new Pattern.Label(baseline(top, i), CAPITALS, lines.get(i)))
        .toList();
  }

  /** From the outline below to whatever is drawn above. */
  Length height() {
    return LINE_PITCH.times(lines.size() - 1L).plus(CAPITALS).plus(MARGIN.times(2));
  }

  private Point2 baseline(Length top, int line) {
    int linesBelow = lines.size() - 1 - line;
    return new Point2(Length.ZERO, top.plus(MARGIN).plus(LINE_PITCH.times(linesBelow)));
  }
}
