package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.slatwright.design.drafting.Isometric.Cover;
import org.slatwright.design.drafting.IsometricEdge.Line;

/** Every edge of boxes where it is seen, and nowhere twice; exact, in whole nanometres. */
final class IsometricLines {

  private final Map<Line, Spans> drawn = new HashMap<>();

  private IsometricLines() {}

  /** Of each box, in their order. */
  static List<List<IsometricEdge>> of(IsometricBoxes boxes) {
    return of(boxes.all(), boxes::before);
  }

  /**
   * The same, among more than boxes.
   *
   * @param before what solids that hide some of a box cover
   */
  static List<List<IsometricEdge>> of(
      List<Isometric> boxes, Function<Isometric, List<Cover>> before) {
    IsometricLines lines = new IsometricLines();
    return boxes.stream().map(box -> lines.visible(box, before.apply(box))).toList();
  }

  private List<IsometricEdge> visible(Isometric box, List<Cover> before) {
    return before.stream().anyMatch(cover -> cover.covers(box.silhouette()))
        ? List.of()
        : IsometricEdge.of(box).stream().flatMap(edge -> visible(edge, before).stream()).toList();
  }

  private List<IsometricEdge> visible(IsometricEdge edge, List<Cover> before) {
    Line line = edge.line();
    Spans seen = seen(edge, before);
    Spans already = drawn.getOrDefault(line, Spans.NONE);
    drawn.put(line, already.plus(seen));
    return edges(line, seen.minus(already));
  }

  /** What is seen of an edge behind some covers. */
  static List<IsometricEdge> visibleBehind(IsometricEdge edge, List<Cover> before) {
    return edges(edge.line(), seen(edge, before));
  }

  private static Spans seen(IsometricEdge edge, List<Cover> before) {
    List<Spans.Span> hidden = new ArrayList<>();
    before.forEach(cover -> hidden.addAll(cover.on(edge.line()).spans()));
    return Spans.of(edge.from(), edge.to()).minus(Spans.joined(hidden));
  }

  private static List<IsometricEdge> edges(Line line, Spans spans) {
    return spans.spans().stream()
        .map(span -> new IsometricEdge(line, span.from(), span.to()))
        .toList();
  }
}
