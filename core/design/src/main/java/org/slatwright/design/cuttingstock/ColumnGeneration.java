package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The pattern program without its whole numbers: how often is each pattern cut, fractions allowed,
 * so that all is cut at the least cost? Patterns are made as they are needed, by a knapsack over
 * the worth that the program gives each piece (Gilmore and Gomory 1961, 1963).
 *
 * <p>The worths are rounded to whole numbers of {@link #scale} to a unit of price before the
 * knapsack sees them. So the bound needs no {@code double}: with worths v of the pieces, every plan
 * costs at least Σ demand·v less, for each stock, available times what its best pattern is worth
 * above its price.
 */
final class ColumnGeneration {

  /** How far below its price, to the highest price, a pattern must be to be of use. */
  private static final double WORTHWHILE = 4e-9;

  /** How little less than is wanted is cut while patterns are made. */
  private static final double LOOSE = 1e-6;

  /** Steps of a knapsack after which what it has found will do. */
  private static final long PATIENCE = 1_000;

  final Job job;
  final LinearProgram program;

  /** Every pattern made so far, in the order of the program's variables. */
  final List<Pattern> patterns = new ArrayList<>();

  /** The program's variable of each pattern. */
  private int[] variables = new int[64];

  private final Set<Pattern> known = new HashSet<>();
  private final Work work;
  private final Knapsack knapsack;
  private final long highestPrice;
  private final long worthwhile;

  /** Whole numbers to a unit of price. */
  final long scale;

  /** What each kind of piece is worth, in {@link #scale}; the last ones. */
  private long[] worth;

  /** What the best pattern of each stock is worth above its price, at least 0, for those worths. */
  private final long[] excess;

  ColumnGeneration(Job job, Work work) {
    this.job = job;
    this.work = work;
    this.program = new LinearProgram(work);
    this.knapsack = new Knapsack(job.weight, work);
    this.highestPrice = job.highestPrice();
    long largest = Math.max(1, Math.multiplyExact(highestPrice, (long) job.pieces()));
    this.scale = Math.max(1, Math.min(1L << 30, (1L << 50) / largest));
    this.worthwhile = Math.max(1, (long) (WORTHWHILE * highestPrice * scale));
    this.worth = new long[job.kinds()];
    this.excess = new long[job.stocks()];
    for (int i = 0; i < job.kinds(); i++) {
      program.addRow(job.demand[i], Double.POSITIVE_INFINITY);
    }
    for (int k = 0; k < job.stocks(); k++) {
      program.addRow(0, stockLimit(k, job.available));
    }
    for (int i = 0; i < job.kinds(); i++) {
      add(alone(i));
    }
  }

  private double stockLimit(int stock, int[] available) {
    return job.unlimited[stock] ? Double.POSITIVE_INFINITY : available[stock];
  }

  /** As many of a kind as the cheapest unlimited stock holds, or one that is missing. */
  private Pattern alone(int kind) {
    if (job.mayMiss[kind]) {
      return Pattern.missing(kind);
    }
    int best = -1;
    for (int k = 0; k < job.stocks(); k++) {
      if (job.unlimited[k]
          && job.capacity[k] >= job.weight[kind]
          && (best < 0 || job.price[k] < job.price[best])) {
        best = k;
      }
    }
    int n = (int) Math.min(job.demand[kind], job.capacity[best] / job.weight[kind]);
    return new Pattern(best, new int[] {kind}, new int[] {n});
  }

  /**
   * Adds the patterns of a plan to start from. The program has a basis before it sees them: so many
   * patterns at once that cost the same hold the dual method up.
   */
  void start(Plan plan) {
    program.solve();
    plan.cuts().forEach(cut -> add(Pattern.of(cut.stock(), cut.pieces())));
  }

  /** Adds a pattern, if it is new. */
  void add(Pattern pattern) {
    if (!known.add(pattern)) {
      return;
    }
    int size = pattern.kinds().length;
    boolean missing = pattern.stock() == Pattern.MISSING;
    int[] rows = Arrays.copyOf(pattern.kinds(), missing ? size : size + 1);
    double[] values = new double[rows.length];
    for (int e = 0; e < size; e++) {
      values[e] = pattern.counts()[e];
    }
    if (!missing) {
      rows[size] = stockRow(pattern.stock());
      values[size] = 1;
    }
    double price = (double) pattern.price(job) / highestPrice;
    int variable = program.addVariable(price, rows, values, 0, Double.POSITIVE_INFINITY);
    if (patterns.size() == variables.length) {
      variables = Arrays.copyOf(variables, patterns.size() * 2);
    }
    variables[patterns.size()] = variable;
    patterns.add(pattern);
  }

  int stockRow(int stock) {
    return job.kinds() + stock;
  }

  int variable(int pattern) {
    return variables[pattern];
  }

  /** A dual of the program as a whole number. */
  long scaled(double dual) {
    return (long) Math.floor(dual * highestPrice * scale);
  }

  /** What each kind of piece was worth last, in {@link #scale}. */
  long[] worth() {
    return worth.clone();
  }

  /** What the best pattern of each stock is worth above its price, for those worths. */
  long[] excess() {
    return excess.clone();
  }

  /**
   * Solves the program for such demands and stock.
   *
   * @param rounds how often to make patterns at most
   * @param reserve the work to leave
   * @return a bound in {@link #scale} of what they cost, exact, at least 0; worths and excess are
   *     those it was reckoned with
   */
  long solve(int[] demand, int[] available, int rounds, long reserve) {
    loosen(demand);
    limit(available);
    long best = 0;
    long[] bestWorth = new long[job.kinds()];
    long[] bestExcess = new long[job.stocks()];
    for (int round = 0; program.solve() == LinearProgram.End.LEAST && !work.isOver(); round++) {
      boolean last = round == rounds || work.left() < reserve;
      value(demand);
      if (!last && priceQuickly(demand, available)) {
        continue;
      }
      boolean grown = price(demand, available);
      if (work.isOver()) {
        break;
      }
      long bound = bound(demand, available);
      if (bound >= best) {
        best = bound;
        bestWorth = worth.clone();
        System.arraycopy(excess, 0, bestExcess, 0, excess.length);
      }
      if (!grown || last || isEnough(bound)) {
        break;
      }
    }
    demand(demand);
    program.solve();
    worth = bestWorth;
    System.arraycopy(bestExcess, 0, excess, 0, excess.length);
    return best;
  }

  private void demand(int[] demand) {
    for (int i = 0; i < job.kinds(); i++) {
      program.boundRow(i, demand[i], Double.POSITIVE_INFINITY);
    }
  }

  /** A little less of each kind, a different one of each, so that no exchange goes nowhere. */
  private void loosen(int[] demand) {
    for (int i = 0; i < job.kinds(); i++) {
      double less = LOOSE * (1 + (i * 7919 % 1009) / 1009.0);
      program.boundRow(i, Math.max(0, demand[i] - less), Double.POSITIVE_INFINITY);
    }
  }

  private void limit(int[] available) {
    for (int k = 0; k < job.stocks(); k++) {
      program.boundRow(stockRow(k), 0, stockLimit(k, available));
    }
  }

  /** Solves the program for such demands and stock with patterns made in haste; what they cost. */
  double guess(int[] demand, int[] available, int rounds) {
    demand(demand);
    limit(available);
    for (int round = 0; program.solve() == LinearProgram.End.LEAST; round++) {
      value(demand);
      if (round == rounds || work.isOver() || !priceQuickly(demand, available)) {
        break;
      }
    }
    return program.cost() * highestPrice;
  }

  /** Whether the bound rounds up to what the program's least cost would. */
  private boolean isEnough(long bound) {
    double least = Math.ceil(program.cost() * highestPrice - 1e-6);
    return -Math.floorDiv(-bound, scale) >= least;
  }

  private void value(int[] demand) {
    double[] duals = program.duals();
    for (int i = 0; i < job.kinds(); i++) {
      worth[i] = Math.max(0, scaled(duals[i]));
      if (job.mayMiss[i]) {
        worth[i] = Math.min(worth[i], scale * job.missingPrice);
      }
    }
    knapsack.value(worth, demand);
  }

  private long charged(int stock) {
    return Math.max(0, -scaled(program.duals()[stockRow(stock)]));
  }

  private boolean priceQuickly(int[] demand, int[] available) {
    int before = patterns.size();
    for (int k = 0; k < job.stocks(); k++) {
      long least = scale * job.price[k] + charged(k) + worthwhile;
      if (available[k] > 0 && knapsack.good(job.capacity[k], PATIENCE) > least) {
        addFound(k, least, demand);
      }
    }
    return patterns.size() > before;
  }

  /** Makes the patterns that are worth more than they cost; whether there are any. */
  private boolean price(int[] demand, int[] available) {
    int before = patterns.size();
    for (int k = 0; k < job.stocks(); k++) {
      long price = scale * job.price[k];
      excess[k] = knapsack.best(job.capacity[k], price) - price;
      long least = price + charged(k) + worthwhile;
      if (available[k] > 0 && price + excess[k] > least) {
        addFound(k, least, demand);
      }
    }
    return patterns.size() > before;
  }

  private void addFound(int stock, long least, int[] demand) {
    for (int[] pieces : knapsack.found()) {
      add(Pattern.of(stock, pieces));
    }
    addBeside(stock, least, demand);
  }

  /** Patterns of the pieces that the best one leaves, as long as they are worth it too. */
  private void addBeside(int stock, long floor, int[] demand) {
    int[] left = demand.clone();
    while (true) {
      take(knapsack.pieces(), left);
      knapsack.value(worth, left);
      if (knapsack.good(job.capacity[stock], PATIENCE) <= floor) {
        knapsack.value(worth, demand);
        return;
      }
      add(Pattern.of(stock, knapsack.pieces()));
    }
  }

  /** As often as there are pieces left for the whole pattern. */
  private static void take(int[] pieces, int[] left) {
    int times = Integer.MAX_VALUE;
    for (int i = 0; i < left.length; i++) {
      times = pieces[i] > 0 ? Math.min(times, left[i] / pieces[i]) : times;
    }
    for (int i = 0; i < left.length; i++) {
      left[i] -= pieces[i] * times;
    }
  }

  private long bound(int[] demand, int[] available) {
    long bound = 0;
    for (int i = 0; i < demand.length; i++) {
      bound += demand[i] * worth[i];
    }
    for (int k = 0; k < available.length; k++) {
      bound -= Math.multiplyExact(available[k], excess[k]);
    }
    return Math.max(0, bound);
  }
}
