package org.slatwright.benchmarks.cuttingstock;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingStock;
import org.slatwright.design.cuttingstock.Effort;

/**
 * Solves the instances of files, or those that ship, checks every plan anew, and tells how well and
 * how quickly.
 */
public final class CuttingBenchmark {

  private static final String USAGE =
      "usage: CuttingBenchmark [--reference SECONDS] [FILE…], SECONDS from 1 to 3600";
  private static final double WARM_UP_MILLIS = 5_000;

  private final OptionalInt referenceSeconds;
  private final PrintStream out;

  private CuttingBenchmark(OptionalInt referenceSeconds, PrintStream out) {
    this.referenceSeconds = referenceSeconds;
    this.out = out;
  }

  /**
   * Ends with status 1 when one of our plans is wrong, 2 when a file or an option cannot be used.
   *
   * @param arguments {@code --reference SECONDS} to let a general-purpose solver try as well, so
   *     long for each; then the files to solve, none for those that ship
   */
  public static void main(String[] arguments) {
    System.exit(run(List.of(arguments), System.out, System.err));
  }

  static int run(List<String> arguments, PrintStream out, PrintStream err) {
    boolean reference = !arguments.isEmpty() && arguments.get(0).equals("--reference");
    OptionalInt seconds = reference ? seconds(arguments) : OptionalInt.empty();
    if (reference && seconds.isEmpty()) {
      err.println(USAGE);
      return 2;
    }
    try {
      List<Instance> instances = read(arguments.subList(reference ? 2 : 0, arguments.size()));
      return new CuttingBenchmark(seconds, out).measure(instances) ? 0 : 1;
    } catch (InstanceFileException e) {
      err.println(e.getMessage());
      return 2;
    }
  }

  private static OptionalInt seconds(List<String> arguments) {
    boolean whole = arguments.size() > 1 && arguments.get(1).matches("[1-9][0-9]{0,3}");
    int seconds = whole ? Integer.parseInt(arguments.get(1)) : 0;
    return seconds >= 1 && seconds <= 3600 ? OptionalInt.of(seconds) : OptionalInt.empty();
  }

  private static List<Instance> read(List<String> files) throws InstanceFileException {
    if (files.isEmpty()) {
      return ShippedInstances.all();
    }
    List<Instance> all = new ArrayList<>();
    for (String file : files) {
      all.addAll(InstanceReader.read(file, lines(file)));
    }
    return all;
  }

  private static List<String> lines(String file) throws InstanceFileException {
    try {
      return Files.readAllLines(Path.of(file));
    } catch (IOException e) {
      throw new InstanceFileException(file + ": cannot be read as a UTF-8 text file");
    }
  }

  /** Whether all our plans are right. */
  private boolean measure(List<Instance> instances) {
    warmUp(instances, CuttingBenchmark::ours);
    if (referenceSeconds.isPresent()) {
      warmUp(instances, problem -> ReferenceSolver.solve(problem, 1));
    }
    out.println(Measured.header(referenceSeconds.isPresent()));
    List<Measured> all = new ArrayList<>();
    for (Instance instance : instances) {
      all.add(measured(instance));
      out.println(all.get(all.size() - 1).line());
    }
    Summary summary = new Summary(all);
    out.printf("%n%s", summary.text());
    return summary.allRight();
  }

  private Measured measured(Instance instance) {
    Attempt ours = Attempt.of(instance, CuttingBenchmark::ours);
    Optional<Attempt> reference =
        referenceSeconds.isEmpty()
            ? Optional.empty()
            : Optional.of(
                Attempt.of(instance, p -> ReferenceSolver.solve(p, referenceSeconds.getAsInt())));
    return new Measured(ours, FirstFitDecreasing.cost(instance.problem()), reference);
  }

  private static Optional<CuttingSolution> ours(CuttingProblem problem) {
    return Optional.of(CuttingStock.solve(problem, Effort.USUAL));
  }

  private static void warmUp(
      List<Instance> instances, Function<CuttingProblem, Optional<CuttingSolution>> solver) {
    double spent = 0;
    for (int next = 0; spent < WARM_UP_MILLIS && next < 100 * instances.size(); next++) {
      spent += Attempt.of(instances.get(next % instances.size()), solver).millis();
    }
  }
}
