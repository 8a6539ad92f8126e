package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Texts in a row, each where it belongs or as near to it as the others let it be. */
public final class Spread {

  private Spread() {}

  /**
   * Where the middle of each lies: the least squares of what they are moved by.
   *
   * @param wanted where each belongs, rising
   * @param pitch least distance from one to the next
   * @param low no middle lies below it
   * @param high nor above it, where all have room below
   */
  public static double[] places(double[] wanted, double pitch, double low, double high) {
    double[] closed = new double[wanted.length];
    for (int i = 0; i < wanted.length; i++) {
      closed[i] = wanted[i] - i * pitch;
    }
    double[] places = nondecreasing(closed);
    double highest = Math.max(low, high - height(wanted.length, pitch));
    for (int i = 0; i < places.length; i++) {
      places[i] = Math.min(Math.max(places[i], low), highest) + i * pitch;
    }
    return places;
  }

  /** From the middle of the first to the middle of the last when they stand close. */
  public static double height(int count, double pitch) {
    return Math.max(0, count - 1) * pitch;
  }

  /** The nearest numbers of which none is below the one before: neighbours pooled to their mean. */
  private static double[] nondecreasing(double[] wanted) {
    List<Pool> pools = new ArrayList<>();
    for (double each : wanted) {
      Pool pool = new Pool(each, 1);
      while (!pools.isEmpty() && pools.get(pools.size() - 1).mean() > pool.mean()) {
        pool = pools.remove(pools.size() - 1).with(pool);
      }
      pools.add(pool);
    }
    return pools.stream()
        .flatMapToDouble(pool -> DoubleStream.generate(pool::mean).limit(pool.count()))
        .toArray();
  }

  private record Pool(double sum, int count) {

    double mean() {
      return sum / count;
    }

    Pool with(Pool other) {
      return new Pool(sum + other.sum, count + other.count);
    }
  }
}
