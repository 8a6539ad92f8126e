package org.slatwright.benchmarks.cuttingstock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;
import org.slatwright.design.cuttingstock.CuttingSolution;

/**
 * What a general-purpose solver of integer programs makes of a problem: ojAlgo, over every full
 * pattern, knowing nothing of our own solver. (The program is that of P. C. Gilmore and R. E.
 * Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9
 * (1961), 849-859.)
 *
 * <p>Chosen by trial: with a variable for each kind of piece on each board, or at each place where
 * one may begin, ojAlgo finds no plan of most instances.
 */
final class ReferenceSolver {

  /** With three times as many, ojAlgo finds no plan in its time, and overruns it. */
  private static final int MOST_PATTERNS = 5_000;

  private final CuttingProblem problem;
  private final ExpressionsBasedModel model = new ExpressionsBasedModel();
  private final List<Column> columns = new ArrayList<>();
  private final Map<Demand, Variable> missing = new HashMap<>();
  private final List<Expression> wanted = new ArrayList<>();

  private ReferenceSolver(CuttingProblem problem) {
    this.problem = problem;
  }

  /** A way to cut a stock length, and how often it is. */
  private record Column(int stock, int[] pieces, Variable times) {}

  /**
   * The best plan that ojAlgo finds, right or wrong. Its bound is the cost where ojAlgo claims that
   * none is cheaper, else 0.
   *
   * @param seconds how long to look; a large problem takes longer
   * @return empty when there are too many patterns, or no plan is found
   */
  static Optional<CuttingSolution> solve(CuttingProblem problem, int seconds) {
    ReferenceSolver solver = new ReferenceSolver(problem);
    problem.demands().forEach(solver::addDemand);
    for (int stock = 0; stock < problem.stocks().size(); stock++) {
      if (!solver.addStock(stock)) {
        return Optional.empty();
      }
    }
    return solver.minimise(seconds);
  }

  /** At least as many as are wanted: what is too much is left out of the plan. */
  private void addDemand(Demand demand) {
    Expression cut = model.newExpression("cut " + demand.length()).lower(demand.count());
    wanted.add(cut);
    if (!canBeBought(demand)) {
      Variable none = model.newVariable("missing " + demand.length()).integer().lower(0);
      cut.set(none.upper(demand.count()).weight(missingPrice()), 1);
      missing.put(demand, none);
    }
  }

  private boolean canBeBought(Demand demand) {
    return problem.stocks().stream()
        .anyMatch(s -> s.available().isEmpty() && problem.fits(s, 1, demand.length()));
  }

  /** More than any plan costs. */
  private long missingPrice() {
    int pieces = problem.demands().stream().mapToInt(Demand::count).sum();
    return 1
        + problem.stocks().stream()
            .mapToLong(s -> s.price() * Math.min(pieces, s.available().orElse(pieces)))
            .sum();
  }

  private boolean addStock(int index) {
    Stock stock = problem.stocks().get(index);
    Optional<List<int[]>> patterns =
        FullPatterns.of(problem, stock, MOST_PATTERNS - columns.size());
    patterns.orElse(List.of()).forEach(pieces -> addPattern(index, pieces));
    if (stock.available().isPresent()) {
      Expression limit = model.newExpression("stock " + index).upper(stock.available().getAsInt());
      columns.stream().filter(c -> c.stock() == index).forEach(c -> limit.set(c.times(), 1));
    }
    return patterns.isPresent();
  }

  /** A variable without an upper limit sends ojAlgo down without end. */
  private void addPattern(int index, int[] pieces) {
    Variable times = model.newVariable("pattern " + columns.size()).integer().lower(0);
    int most = 0;
    for (int i = 0; i < pieces.length; i++) {
      if (pieces[i] > 0) {
        wanted.get(i).set(times, pieces[i]);
        most = Math.max(most, (problem.demands().get(i).count() - 1) / pieces[i] + 1);
      }
    }
    times.upper(most).weight(problem.stocks().get(index).price());
    columns.add(new Column(index, pieces, times));
  }

  private Optional<CuttingSolution> minimise(int seconds) {
    model.options.integer(strategy());
    model.options.time_suffice = 1_000L * seconds;
    model.options.time_abort = 1_000L * seconds;
    Optimisation.Result result = model.minimise();
    if (!result.getState().isFeasible()) {
      return Optional.empty();
    }
    List<Integer> none =
        problem.demands().stream()
            .map(d -> missing.containsKey(d) ? whole(missing.get(d)) : 0)
            .toList();
    List<CuttingSolution.Pattern> patterns = patterns(none);
    long cost =
        patterns.stream().mapToLong(p -> problem.stocks().get(p.stock()).price() * p.times()).sum();
    long claimed =
        Math.round(result.getValue())
            - missingPrice() * none.stream().mapToInt(Integer::intValue).sum();
    return Optional.of(
        new CuttingSolution(patterns, none, cost, result.getState().isOptimal() ? claimed : 0));
  }

  /**
   * One thread, as ours has, and no cutting planes: with those ojAlgo 56.0.0 calls some dearer
   * plans optimal and some problems infeasible, a few small ones in a thousand.
   */
  private static IntegerStrategy strategy() {
    IntegerStrategy.GMICutConfiguration none =
        new IntegerStrategy.GMICutConfiguration().withFractionality(1);
    return IntegerStrategy.newConfigurable().withParallelism(() -> 1).withGMICutConfiguration(none);
  }

  private static int whole(Variable variable) {
    return (int) Math.round(variable.getValue().doubleValue());
  }

  /** What is cut, without the pieces that are too many. */
  private List<CuttingSolution.Pattern> patterns(List<Integer> none) {
    int[] left =
        IntStream.range(0, none.size())
            .map(i -> problem.demands().get(i).count() - none.get(i))
            .toArray();
    List<CuttingSolution.Pattern> patterns = new ArrayList<>();
    for (Column column : columns) {
      int times = whole(column.times());
      while (times > 0 && take(column, times, left, patterns)) {
        times -= patterns.get(patterns.size() - 1).times();
      }
    }
    return patterns;
  }

  /** Cuts as many alike as give pieces that are wanted; says whether any do. */
  private static boolean take(
      Column column, int most, int[] left, List<CuttingSolution.Pattern> patterns) {
    int[] pieces = new int[left.length];
    int times = most;
    boolean any = false;
    for (int i = 0; i < left.length; i++) {
      pieces[i] = Math.min(column.pieces()[i], left[i]);
      if (pieces[i] > 0) {
        times = Math.min(times, left[i] / pieces[i]);
        any = true;
      }
    }
    if (any) {
      for (int i = 0; i < left.length; i++) {
        left[i] -= times * pieces[i];
      }
      List<Integer> counts = IntStream.of(pieces).boxed().toList();
      patterns.add(new CuttingSolution.Pattern(column.stock(), counts, times));
    }
    return any;
  }
}
