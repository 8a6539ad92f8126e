package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.slatwright.api.measure.Length;

/** Stretches of one straight line, apart from each other and in order. */
record Spans(List<Span> spans) {

  static final Spans NONE = new Spans(List.of());

  /** From one coordinate to a greater one. */
  record Span(long from, long to) {

    static Span of(Length from, Length length) {
      return new Span(from.nanometres(), from.plus(length).nanometres());
    }

    Length length() {
      return new Length(to - from);
    }
  }

  Spans {
    spans = List.copyOf(spans);
  }

  static Spans of(long from, long to) {
    return from < to ? new Spans(List.of(new Span(from, to))) : NONE;
  }

  /** Everything that lies in either. */
  Spans plus(Spans other) {
    List<Span> all = new ArrayList<>(spans);
    all.addAll(other.spans);
    return joined(all);
  }

  /** Everything that lies in any of them, in any order. */
  static Spans joined(List<Span> stretches) {
    List<Span> all = stretches.stream().sorted(Comparator.comparingLong(Span::from)).toList();
    List<Span> joined = new ArrayList<>();
    for (Span span : all) {
      Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && span.from <= last.to) {
        joined.set(joined.size() - 1, new Span(last.from, Math.max(last.to, span.to)));
      } else {
        joined.add(span);
      }
    }
    return new Spans(joined);
  }

  /** Everything of this that does not lie in {@code other}. */
  Spans minus(Spans other) {
    List<Span> rest = new ArrayList<>();
    for (Span span : spans) {
      long at = span.from;
      for (Span taken : other.spans) {
        if (taken.to > at && taken.from < span.to) {
          if (taken.from > at) {
            rest.add(new Span(at, taken.from));
          }
          at = taken.to;
        }
      }
      if (at < span.to) {
        rest.add(new Span(at, span.to));
      }
    }
    return new Spans(rest);
  }

  /** Everything of this between two coordinates. */
  Spans within(long from, long to) {
    return new Spans(
        spans.stream()
            .map(span -> new Span(Math.max(span.from, from), Math.min(span.to, to)))
            .filter(span -> span.from < span.to)
            .toList());
  }
}
