package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Random;

/**
 * Plans made one stock length after another, each filled with the pieces of most value that are
 * left. A piece is valued by its length, longer ones a little above, and after each stock length by
 * how wasteful its pieces were to cut: what fits badly is worth more the next time, and so is cut
 * while there is choice left (sequential value correction, Mukhacheva; Belov and Scheithauer 2007).
 */
final class ValueCorrection {

  /** Steps of a knapsack after which what it has found will do. */
  private static final long PATIENCE = 1_000;

  /** A whole number for the value of the longest piece. */
  private static final double LARGEST = 1 << 24;

  private final Job job;
  private final Best best;
  private final Work work;
  private final Knapsack knapsack;

  /** Settled, so that the same job has the same plan. */
  private final Random random = new Random(1);

  private final double[] value;

  private final double[] usual;
  private final long[] worth;

  ValueCorrection(Job job, Best best, Work work) {
    this.job = job;
    this.best = best;
    this.work = work;
    this.knapsack = new Knapsack(job.weight, work);
    this.value = new double[job.kinds()];
    this.usual = new double[job.kinds()];
    this.worth = new long[job.kinds()];
    longerAbove(1.02);
    System.arraycopy(usual, 0, value, 0, value.length);
  }

  private void longerAbove(double power) {
    for (int i = 0; i < usual.length; i++) {
      usual[i] = StrictMath.pow((double) job.weight[i] / job.weight[0], power);
    }
  }

  /** Offers so many plans, or fewer when one costs no more than a goal or the work is spent. */
  void run(int plans, long goal, long allowed) {
    long reserve = Math.max(0, work.left() - allowed);
    for (int n = 0; n < plans && best.cost() > goal && work.left() > reserve; n++) {
      longerAbove(1.01 + 0.03 * random.nextDouble());
      best.offer(plan());
    }
  }

  private Plan plan() {
    int[] wanted = job.demand.clone();
    int[] left = job.available.clone();
    var cuts = new ArrayList<Plan.Cut>();
    var next = next(wanted, left);
    while (next != null) {
      cuts.add(next);
      left[next.stock()] -= next.times();
      correct(next, wanted);
      for (int i = 0; i < wanted.length; i++) {
        wanted[i] -= next.pieces()[i] * next.times();
      }
      next = next(wanted, left);
    }
    return Plan.of(cuts);
  }

  /** The stock length with the most value for its price; null when nothing more can be cut. */
  private Plan.Cut next(int[] wanted, int[] left) {
    for (int i = 0; i < worth.length; i++) {
      worth[i] = (long) (value[i] * LARGEST);
    }
    knapsack.value(worth, wanted);
    work.spend(worth.length * 12L);
    int chosen = -1;
    double most = 0;
    int[] pieces = new int[0];
    for (int k = 0; k < left.length; k++) {
      if (left[k] > 0) {
        double gain =
            (double) knapsack.good(job.capacity[k], PATIENCE) / Math.max(1e-9, job.price[k]);
        if (gain > most) {
          most = gain;
          chosen = k;
          pieces = knapsack.pieces();
        }
      }
    }
    return chosen < 0 ? null : new Plan.Cut(cheapest(chosen, pieces, left), pieces, 1);
  }

  private int cheapest(int stock, int[] pieces, int[] left) {
    long full = full(pieces);
    int cheapest = stock;
    for (int k = 0; k < left.length; k++) {
      if (left[k] > 0 && job.capacity[k] >= full && job.price[k] < job.price[cheapest]) {
        cheapest = k;
      }
    }
    return cheapest;
  }

  private long full(int[] pieces) {
    long full = 0;
    for (int i = 0; i < pieces.length; i++) {
      full += pieces[i] * job.weight[i];
    }
    return full;
  }

  private void correct(Plan.Cut cut, int[] wanted) {
    double waste = (double) job.capacity[cut.stock()] / full(cut.pieces());
    for (int i = 0; i < value.length; i++) {
      if (cut.pieces()[i] > 0) {
        double weight =
            (0.67 + random.nextDouble()) * (wanted[i] + job.demand[i]) / cut.pieces()[i];
        value[i] = (weight * value[i] + usual[i] * waste) / (weight + 1);
      }
    }
  }
}
