package org.slatwright.benchmarks.cuttingstock;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** All instances in a few lines. */
record Summary(List<Measured> all) {

  String text() {
    List<Attempt> reference =
        all.stream().map(Measured::reference).flatMap(Optional::stream).toList();
    return ours() + firstFit() + (reference.isEmpty() ? "" : reference(reference));
  }

  /** Whether each of our plans is what it says. */
  boolean allRight() {
    return all.stream().allMatch(m -> m.ours().faults().isEmpty());
  }

  private String ours() {
    List<Attempt> ours = all.stream().map(Measured::ours).toList();
    return String.format(
        Locale.ROOT,
        """
        %d instances, %d of known optimum
        plans checked anew: %d right, %d wrong
        proved %d, at the known optimum %d, worst %.2f %% or %.2f stock lengths over
        %s
        """,
        ours.size(),
        count(ours, a -> a.instance().optimum().isPresent()),
        count(ours, a -> a.faults().isEmpty()),
        count(ours, a -> !a.faults().isEmpty()),
        count(ours, Attempt::isProved),
        count(ours, Attempt::isAtOptimum),
        worst(all, m -> m.percentOver(m.plan().cost())),
        worst(all, m -> m.lengthsOver(m.plan().cost())),
        times(ours));
  }

  private String firstFit() {
    List<Measured> planned = all.stream().filter(m -> m.firstFit().isPresent()).toList();
    return String.format(
        Locale.ROOT,
        "first fit decreasing: at the known optimum %d, worst %.2f %% or %.2f stock lengths over%n",
        count(planned, m -> m.firstFit().equals(m.instance().optimum())),
        worst(planned, m -> m.percentOver(m.firstFit().getAsLong())),
        worst(planned, m -> m.lengthsOver(m.firstFit().getAsLong())));
  }

  private static String reference(List<Attempt> reference) {
    List<Attempt> planned = reference.stream().filter(a -> a.solution().isPresent()).toList();
    return String.format(
        Locale.ROOT,
        """
        reference solver: %d of %d planned, %d wrong, called proved %d, at the known optimum %d
        %s
        """,
        planned.size(),
        reference.size(),
        count(reference, a -> !a.faults().isEmpty()),
        count(reference, Attempt::isProved),
        count(reference, Attempt::isAtOptimum),
        times(planned));
  }

  private static String times(List<Attempt> attempts) {
    return String.format(
        Locale.ROOT,
        "time: median %.1f ms, 95th percentile %.1f ms, longest %.1f ms, warm",
        percentile(attempts, 50),
        percentile(attempts, 95),
        percentile(attempts, 100));
  }

  private static <T> long count(List<T> all, Predicate<T> which) {
    return all.stream().filter(which).count();
  }

  private static double worst(List<Measured> all, ToDoubleFunction<Measured> over) {
    return all.stream().mapToDouble(over).max().orElse(0);
  }

  /** The nearest rank: the least time that so many percent do not exceed. */
  private static double percentile(List<Attempt> attempts, int percent) {
    double[] sorted = attempts.stream().mapToDouble(Attempt::millis).sorted().toArray();
    return sorted.length == 0 ? 0 : sorted[(sorted.length * percent + 99) / 100 - 1];
  }
}
