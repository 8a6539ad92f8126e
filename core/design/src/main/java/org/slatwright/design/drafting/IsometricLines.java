package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.design.drafting.Isometric.Silhouette;
import org.slatwright.design.drafting.IsometricEdge.Line;

/** Every edge of boxes where it is seen, and nowhere twice; exact, in whole nanometres. */
final class IsometricLines {

  private final Map<Line, Spans> drawn = new HashMap<>();

  private IsometricLines() {}

  /** Of each box, in their order. */
  static List<List<IsometricEdge>> of(IsometricBoxes boxes) {
    IsometricLines lines = new IsometricLines();
    return boxes.all().stream().map(box -> lines.visible(box, boxes.before(box))).toList();
  }

  private List<IsometricEdge> visible(Isometric box, List<Silhouette> before) {
    return before.stream().anyMatch(silhouette -> silhouette.covers(box.silhouette()))
        ? List.of()
        : IsometricEdge.of(box).stream().flatMap(edge -> visible(edge, before).stream()).toList();
  }

  private List<IsometricEdge> visible(IsometricEdge edge, List<Silhouette> before) {
    Line line = edge.line();
    List<Spans.Span> hidden = new ArrayList<>();
    before.forEach(silhouette -> hidden.addAll(line.within(silhouette).spans()));
    Spans seen = Spans.of(edge.from(), edge.to()).minus(Spans.joined(hidden));
    Spans already = drawn.getOrDefault(line, Spans.NONE);
    drawn.put(line, already.plus(seen));
    return seen.minus(already).spans().stream()
        .map(span -> new IsometricEdge(line, span.from(), span.to()))
        .toList();
  }
}
