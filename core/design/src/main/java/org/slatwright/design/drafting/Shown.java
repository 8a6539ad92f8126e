package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.slatwright.design.drafting.Spans.Span;

/**
 * What of a view is shown along one of its axes: all of it, or stretches moved together with a
 * break where something is left out.
 *
 * @param from where all of it starts, in nm
 * @param to where it ends
 * @param kept what is shown of that, at least one stretch
 */
record Shown(long from, long to, Spans kept) {

  /** Between the two lines of a break, in mm on paper. */
  static final double BREAK = 2.5;

  private static final double NM_PER_MM = 1e6;

  static Shown all(long from, long to) {
    return new Shown(from, to, new Spans(List.of(new Span(from, to))));
  }

  /** Of a view from one coordinate to another, what lies in those stretches. */
  static Shown of(long from, long to, List<Span> stretches) {
    return new Shown(from, to, Spans.joined(stretches).within(from, to));
  }

  /** How long it is on paper, in mm. */
  double size(double factor) {
    return place(last().to(), factor);
  }

  /** Where a coordinate that is shown lies on paper, in mm from the start of what is shown. */
  double place(long at, double factor) {
    double before = 0;
    for (Span span : kept.spans()) {
      if (at <= span.to()) {
        return before + Math.max(0, at - span.from()) / NM_PER_MM * factor;
      }
      before += (span.to() - span.from()) / NM_PER_MM * factor + BREAK;
    }
    return before - BREAK;
  }

  boolean shows(long at) {
    return kept.spans().stream().anyMatch(span -> span.from() <= at && at <= span.to());
  }

  /** What is shown of a stretch. */
  List<Span> of(long from, long to) {
    List<Span> seen = new ArrayList<>();
    kept.spans()
        .forEach(span -> seen.addAll(Spans.of(from, to).within(span.from(), span.to()).spans()));
    return seen;
  }

  /** Where lines of a break lie, in mm from the start of what is shown. */
  DoubleStream breaks(double factor) {
    DoubleStream.Builder breaks = DoubleStream.builder();
    double before = 0;
    for (Span span : kept.spans()) {
      double end = before + (span.to() - span.from()) / NM_PER_MM * factor;
      if (span.from() > from) {
        breaks.add(before);
      }
      if (span.to() < to) {
        breaks.add(end);
      }
      before = end + BREAK;
    }
    return breaks.build();
  }

  private Span last() {
    return kept.spans().get(kept.spans().size() - 1);
  }
}
