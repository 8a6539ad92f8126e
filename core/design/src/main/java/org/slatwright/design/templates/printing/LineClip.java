package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/** Clips straight lines to a window (Liang and Barsky 1984). */
record LineClip(PaperBox window) {

  private static final double NOTHING_MM = 1e-9;

  /** What of it lies in the window, its edge included: one polyline for each piece. */
  List<Figure> of(Figure.Polyline line) {
    if (line.points().stream().allMatch(window::contains)) {
      return List.of(line);
    }
    List<PaperPoint> points = new ArrayList<>(line.points());
    if (line.closed()) {
      points.add(points.get(0));
    }
    List<List<PaperPoint>> pieces = pieces(points);
    if (line.closed() && pieces.size() > 1) {
      joinAround(pieces);
    }
    return pieces.stream()
        .<Figure>map(piece -> new Figure.Polyline(piece, false, line.line()))
        .toList();
  }

  private List<List<PaperPoint>> pieces(List<PaperPoint> points) {
    List<List<PaperPoint>> pieces = new ArrayList<>();
    boolean goesOn = false;
    for (int i = 1; i < points.size(); i++) {
      PaperPoint from = points.get(i - 1);
      PaperPoint to = points.get(i);
      Stretch part = part(from, to);
      double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
      if (part.length() * length <= NOTHING_MM) {
        goesOn = false;
        continue;
      }
      if (!goesOn || part.from() > 0) {
        pieces.add(new ArrayList<>(List.of(between(from, to, part.from()))));
      }
      pieces.get(pieces.size() - 1).add(between(from, to, part.to()));
      goesOn = part.to() == 1;
    }
    return pieces;
  }

  /** A closed line may start in the midst of a piece. */
  private static void joinAround(List<List<PaperPoint>> pieces) {
    List<PaperPoint> first = pieces.get(0);
    List<PaperPoint> last = pieces.get(pieces.size() - 1);
    if (first.get(0).equals(last.get(last.size() - 1))) {
      last.addAll(first.subList(1, first.size()));
      pieces.remove(0);
    }
  }

  /** From which share of the line to which it lies in the window; of no length when nowhere. */
  private Stretch part(PaperPoint from, PaperPoint to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    Stretch part = new Stretch(0, 1);
    part = before(part, dx, window.right() - from.x());
    part = before(part, -dx, from.x() - window.left());
    part = before(part, dy, window.top() - from.y());
    return before(part, -dy, from.y() - window.bottom());
  }

  /** What of a stretch is left of an edge that lies {@code distance} ahead of its start. */
  private static Stretch before(Stretch part, double step, double distance) {
    if (step == 0) {
      return distance < 0 ? new Stretch(0, 0) : part;
    }
    double share = distance / step;
    double from = step < 0 ? Math.max(part.from(), share) : part.from();
    double to = step > 0 ? Math.min(part.to(), share) : part.to();
    return from < to ? new Stretch(from, to) : new Stretch(0, 0);
  }

  private static PaperPoint between(PaperPoint from, PaperPoint to, double share) {
    if (share == 1) {
      return to;
    }
    return from.moved(share * (to.x() - from.x()), share * (to.y() - from.y()));
  }
}
