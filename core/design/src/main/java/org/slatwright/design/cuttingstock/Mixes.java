package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/** Every mix of so many stock lengths at one price that together hold enough. */
final class Mixes {

  private final Job job;
  private final long enough;
  private final Work work;
  private final int[] taken;
  private final List<int[]> found = new ArrayList<>();

  private Mixes(Job job, long enough, Work work) {
    this.job = job;
    this.enough = enough;
    this.work = work;
    this.taken = new int[job.stocks()];
  }

  /**
   * How many of each stock; those that were found before the work was spent.
   *
   * @param enough what the pieces weigh together
   */
  static List<int[]> of(Job job, int lengths, long price, long enough, Work work) {
    var mixes = new Mixes(job, enough, work);
    mixes.take(0, lengths, price, 0);
    return mixes.found;
  }

  private void take(int stock, int lengths, long price, long room) {
    if (!work.spend(10)) {
      return;
    }
    if (lengths == 0 || stock == taken.length) {
      if (lengths == 0 && price == 0 && room >= enough) {
        found.add(taken.clone());
      }
      return;
    }
    long longest = LongStream.of(job.capacity).skip(stock).max().orElse(0);
    if (room + longest * lengths < enough) {
      return;
    }
    for (int n = Math.min(lengths, job.available[stock]); n >= 0; n--) {
      if (job.price[stock] * n <= price) {
        taken[stock] = n;
        take(stock + 1, lengths - n, price - job.price[stock] * n, room + job.capacity[stock] * n);
      }
    }
    taken[stock] = 0;
  }
}
