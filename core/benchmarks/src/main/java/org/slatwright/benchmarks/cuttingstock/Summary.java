package org.slatwright.benchmarks.cuttingstock;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** All instances in a few lines. */
record Summary(List<Measured> all) {

  String text() {
    return String.format(
        Locale.ROOT,
        """
        %d instances, %d of known optimum
        proved %d, at the known optimum %d, worst %.2f %% over
        time: median %.1f ms, 95th percentile %.1f ms, longest %.1f ms, warm
        first fit decreasing: at the known optimum %d, worst %.2f %% over
        """,
        all.size(),
        count(m -> m.instance().optimum().isPresent()),
        count(m -> m.solution().isProved()),
        count(Measured::isAtOptimum),
        all.stream().mapToDouble(m -> m.over(m.solution().cost())).max().orElse(0),
        percentile(50),
        percentile(95),
        percentile(100),
        count(m -> m.firstFit().equals(m.instance().optimum()) && m.firstFit().isPresent()),
        all.stream()
            .filter(m -> m.firstFit().isPresent())
            .mapToDouble(m -> m.over(m.firstFit().getAsLong()))
            .max()
            .orElse(0));
  }

  private long count(Predicate<Measured> which) {
    return all.stream().filter(which).count();
  }

  /** The nearest rank: the least time that so many percent do not exceed. */
  private double percentile(int percent) {
    double[] sorted = all.stream().mapToDouble(Measured::millis).sorted().toArray();
    return sorted.length == 0 ? 0 : sorted[(sorted.length * percent + 99) / 100 - 1];
  }
}
