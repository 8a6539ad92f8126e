package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.design.drafting.Spans.Span;

/** Stretches against the set of whole steps that they hold. */
class SpansTest {

  private static final int LONGEST = 30;

  @Property(tries = 200)
  void joinedHoldsWhateverAnyOfThemHolds(@ForAll("stretches") List<Span> stretches) {
    Spans joined = Spans.joined(stretches);
    for (long step = 0; step < LONGEST; step++) {
      assertEquals(holds(stretches, step), holds(joined.spans(), step), "step " + step);
    }
    assertEquals(steps(joined.spans()).count(), steps(joined.spans()).distinct().count());
  }

  @Property(tries = 200)
  void minusHoldsWhatTheOtherDoesNot(
      @ForAll("stretches") List<Span> here, @ForAll("stretches") List<Span> other) {
    Spans rest = Spans.joined(here).minus(Spans.joined(other));
    for (long step = 0; step < LONGEST; step++) {
      assertEquals(
          holds(here, step) && !holds(other, step), holds(rest.spans(), step), "step " + step);
    }
  }

  @Property(tries = 200)
  void withinHoldsWhatLiesBetween(@ForAll("stretches") List<Span> here) {
    Spans inside = Spans.joined(here).within(7, 19);
    for (long step = 0; step < LONGEST; step++) {
      assertEquals(
          holds(here, step) && step >= 7 && step < 19, holds(inside.spans(), step), "step " + step);
    }
  }

  @Provide
  Arbitrary<List<Span>> stretches() {
    return Arbitraries.longs()
        .between(0, LONGEST - 1)
        .flatMap(
            from -> Arbitraries.longs().between(from + 1, LONGEST).map(to -> new Span(from, to)))
        .list()
        .ofMaxSize(6);
  }

  private static boolean holds(List<Span> spans, long step) {
    return spans.stream().anyMatch(span -> span.from() <= step && step < span.to());
  }

  private static LongStream steps(List<Span> spans) {
    return spans.stream().flatMapToLong(span -> LongStream.range(span.from(), span.to()));
  }
}
