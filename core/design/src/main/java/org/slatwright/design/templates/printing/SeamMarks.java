package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.drafting.Strokes;

/**
 * The marks by which two tiles are laid on one another: diamonds across the trim line with the
 * letter of the seam on either side. The earlier tile shows them whole, the later one up to its
 * trimmed edge, so that each diamond closes when the tiles lie right; a slip of half a millimetre
 * shows (common practice, no source).
 *
 * @param drawn what is drawn about them, group by group undone, which they keep clear of where they
 *     can
 */
record SeamMarks(List<Figure> drawn) {

  /** From the middle of a diamond to its corners; half the overlap, so that the letter fits. */
  private static final double HALF = Cuts.OVERLAP_MM / 2.0;

  private static final double ARM = 2;
  private static final double AIR = 0.5;

  /** Shorter seams have one mark. */
  private static final double TWO_MARKS = 4 * (HALF + ARM);

  /** Of the seam, searched for a place from either end. */
  private static final double SEARCHED = 0.4;

  private static final double STEP_MM = 0.5;
  private static final double COST_OF_TEXT = 10;

  /** The marks of a seam, in mm on the template. */
  List<Figure> of(Seam seam) {
    Stretch free = seam.free();
    double half = Math.min(HALF, free.length() / 2);
    double from = free.from() + half;
    double to = free.to() - half;
    if (free.length() < TWO_MARKS) {
      return mark(seam, best(seam, (from + to) / 2, from, to), half);
    }
    double searched = SEARCHED * (to - from);
    List<Figure> marks = new ArrayList<>();
    marks.addAll(mark(seam, best(seam, from + ARM + AIR, from, from + searched), half));
    marks.addAll(mark(seam, best(seam, to - ARM - AIR, to - searched, to), half));
    return marks;
  }

  /** Where the fewest figures are in the way, next to {@code wish}. */
  private double best(Seam seam, double wish, double from, double to) {
    List<Figure> near = near(seam, from, to);
    double best = wish;
    double least = inTheWay(near, seam, wish);
    for (double at = from; at <= to && least > 0; at += STEP_MM) {
      double cost = inTheWay(near, seam, at) + Math.abs(at - wish) / (to - from + 1);
      if (cost < least) {
        best = at;
        least = cost;
      }
    }
    return best;
  }

  private List<Figure> near(Seam seam, double from, double to) {
    PaperBox box = around(seam.on(from)).with(around(seam.on(to)));
    return drawn.stream().filter(figure -> isIn(box, figure)).toList();
  }

  private static double inTheWay(List<Figure> figures, Seam seam, double at) {
    PaperBox box = around(seam.on(at));
    return figures.stream()
        .filter(figure -> isIn(box, figure))
        .mapToDouble(figure -> figure instanceof Figure.Text ? COST_OF_TEXT : 1)
        .sum();
  }

  private static boolean isIn(PaperBox box, Figure figure) {
    return figure instanceof Figure.Text text
        ? box.meets(TextRoom.of(text))
        : !new Clip(box).of(List.of(figure)).isEmpty();
  }

  private static PaperBox around(PaperPoint at) {
    double reach = HALF + ARM + AIR;
    return new PaperBox(at.x(), at.y(), at.x(), at.y()).grown(reach, reach);
  }

  private static List<Figure> mark(Seam seam, double along, double half) {
    PaperPoint at = seam.on(along);
    Figure diamond =
        new Figure.Polyline(
            List.of(at.moved(-half, 0), at.moved(0, -half), at.moved(half, 0), at.moved(0, half)),
            true,
            LineKind.THIN);
    List<Figure> mark = new ArrayList<>(List.of(diamond));
    for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      mark.add(arm(at, way[0], way[1], half));
    }
    for (int side : new int[] {1, -1}) {
      mark.add(letter(seam, at, side * 0.42 * half, half / 2));
    }
    return mark;
  }

  private static Figure arm(PaperPoint at, int right, int up, double half) {
    double end = half + ARM;
    return Strokes.line(
        at.x() + right * half,
        at.y() + up * half,
        at.x() + right * end,
        at.y() + up * end,
        LineKind.THIN);
  }

  private static Figure letter(Seam seam, PaperPoint at, double off, double height) {
    double right = seam.level() ? 0 : off;
    double up = (seam.level() ? off : 0) - height / 2;
    return new Figure.Text(at.moved(right, up), height, seam.letter(), Figure.Align.MIDDLE, 0);
  }
}
