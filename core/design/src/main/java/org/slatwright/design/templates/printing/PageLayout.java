package org.slatwright.design.templates.printing;

import org.slatwright.api.drawing.Paper;
import org.slatwright.design.drafting.PaperBox;

/**
 * What lies where on a page, which stands upright: words at the head, the check rule across at the
 * foot, the check square and the map above it, the rule up at the right edge, and the rest free for
 * tiles.
 *
 * @param paper all of the page, in mm
 * @param live what the printer reaches of it
 */
record PageLayout(PaperBox paper, PaperBox live) {

  /** Half the widest line. */
  private static final double INK = 0.35;

  private static final double GAP = 2;
  private static final double AIR = 3;
  private static final double HEAD = 10;

  static PageLayout of(Paper paper, double marginMm) {
    PaperBox whole = new PaperBox(0, 0, paper.shortSide().inMm(), paper.longSide().inMm());
    return new PageLayout(whole, whole.grown(-marginMm - INK, -marginMm - INK));
  }

  PaperBox head() {
    return new PaperBox(live.left(), live.top() - HEAD, live.right(), live.top());
  }

  /** For the rule across. */
  PaperBox foot() {
    return new PaperBox(
        live.left(), live.bottom(), live.right(), live.bottom() + CheckRule.THICKNESS_MM);
  }

  /** For the rule up. */
  PaperBox side() {
    return new PaperBox(
        live.right() - CheckRule.THICKNESS_MM,
        foot().top() + AIR,
        live.right(),
        head().bottom() - GAP);
  }

  /** For the square. */
  PaperBox corner() {
    double bottom = side().bottom();
    return new PaperBox(
        live.left(), bottom, live.left() + CheckSquare.MOST_MM, bottom + CheckSquare.MOST_MM);
  }

  /** For the map, right of the square. */
  PaperBox map() {
    PaperBox corner = corner();
    return new PaperBox(
        corner.right() + 2 * GAP, corner.bottom(), side().left() - GAP, corner.top());
  }

  /** Where tiles lie. */
  PaperBox area() {
    return new PaperBox(live.left(), corner().top() + AIR, side().left() - 2 * GAP, side().top());
  }
}
