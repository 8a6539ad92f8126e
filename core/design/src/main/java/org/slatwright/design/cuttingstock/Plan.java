package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is cut from what; each pattern stands once.
 *
 * @param cuts in the order they were found
 */
record Plan(List<Cut> cuts) {

  Plan {
    cuts = List.copyOf(cuts);
  }

  /**
   * Stock lengths that are cut alike.
   *
   * @param stock its index in the job
   * @param pieces how many of each kind; not to be written to
   * @param times at least 1
   */
  record Cut(int stock, int[] pieces, int times) {
    boolean like(Cut other) {
      return stock == other.stock && Arrays.equals(pieces, other.pieces);
    }
  }

  /** Such cuts, those alike counted together. */
  static Plan of(List<Cut> cuts) {
    var merged = new ArrayList<Cut>();
    for (var cut : cuts) {
      int at = 0;
      while (at < merged.size() && !merged.get(at).like(cut)) {
        at++;
      }
      if (at == merged.size()) {
        merged.add(cut);
      } else {
        merged.set(at, new Cut(cut.stock(), cut.pieces(), merged.get(at).times() + cut.times()));
      }
    }
    return new Plan(merged);
  }

  /** How many stock lengths are cut. */
  int lengths() {
    return cuts.stream().mapToInt(Cut::times).sum();
  }

  /** The price of all stock lengths cut. */
  long price(Job job) {
    long sum = 0;
    for (var cut : cuts) {
      sum += job.price[cut.stock()] * cut.times();
    }
    return sum;
  }

  /** The price, and that of the missing pieces. */
  long cost(Job job) {
    long missing = job.pieces();
    for (var cut : cuts) {
      for (int n : cut.pieces()) {
        missing -= (long) n * cut.times();
      }
    }
    return price(job) + missing * job.missingPrice;
  }
}
