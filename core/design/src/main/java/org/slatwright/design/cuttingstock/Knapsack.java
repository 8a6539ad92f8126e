package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pieces of most worth that fit a stock length, each kind at most so often: the bounded
 * knapsack problem, exact in whole numbers. By branch and bound over the kinds in the order of
 * worth for weight (Gilmore and Gomory 1963; Martello and Toth 1990), which does not mind how large
 * the weights are. When that takes longer than a table of all capacities would, and one is small
 * enough, the table is made (dynamic programming, Bellman 1957).
 */
final class Knapsack {

  private static final long LARGEST_TABLE = 4_000_000;

  /** Additions and the like that a step of the search takes. */
  private static final long NODE = 8;

  /** Takes rounding of the bound in {@code double} to the safe side. */
  private static final double SAFE = 1 + 1e-14;

  private final long[] weight;
  private final int[] order;
  private final double[] ratio;
  private final long[] lightest;
  private final long[] dearest;
  private final Work work;

  private long[] worth = new long[0];
  private int[] most = new int[0];
  private int candidates;

  private int[] taken = new int[0];
  private int[] bestTaken = new int[0];
  private long best;
  private final List<int[]> found = new ArrayList<>();
  private long patience;
  private boolean preferTable;
  private Optional<RelaxedKnapsack> relaxed = Optional.empty();

  Knapsack(long[] weight, Work work) {
    this.weight = weight;
    this.work = work;
    this.order = new int[weight.length];
    for (int i = 0; i < weight.length; i++) {
      order[i] = i;
    }
    this.ratio = new double[weight.length];
    this.lightest = new long[weight.length + 1];
    this.dearest = new long[weight.length + 1];
  }

  /** Sets what pieces are worth, at least 0, and how many there may be. */
  void value(long[] worth, int[] most) {
    this.worth = worth;
    this.most = most;
    double[] key = new double[weight.length];
    for (int i = 0; i < weight.length; i++) {
      key[i] = most[i] > 0 ? (double) worth[i] / weight[i] : 0;
    }
    for (int at = 1; at < order.length; at++) {
      int kind = order[at];
      int to = at;
      while (to > 0 && before(key, kind, order[to - 1])) {
        order[to] = order[--to];
      }
      order[to] = kind;
    }
    candidates = 0;
    while (candidates < order.length && key[order[candidates]] > 0) {
      ratio[candidates] = key[order[candidates]] * SAFE;
      candidates++;
    }
    lightest[candidates] = Long.MAX_VALUE;
    dearest[candidates] = 0;
    for (int at = candidates - 1; at >= 0; at--) {
      lightest[at] = Math.min(lightest[at + 1], weight[order[at]]);
      dearest[at] = Math.max(dearest[at + 1], worth[order[at]]);
    }
  }

  private static boolean before(double[] key, int one, int other) {
    return key[one] > key[other] || key[one] == key[other] && one < other;
  }

  /**
   * The most that pieces within a capacity are worth, if that is more than a floor, else the floor.
   * The pieces are those of {@link #pieces}.
   */
  long best(long capacity, long floor) {
    taken = new int[weight.length];
    bestTaken = new int[weight.length];
    best = floor;
    found.clear();
    relaxed = Optional.empty();
    long table = capacity < LARGEST_TABLE ? tableSize(capacity) : Long.MAX_VALUE;
    boolean hasTable = table < LARGEST_TABLE;
    if (!(preferTable && hasTable)) {
      long given = Math.max(20_000, hasTable ? table / 2 : 0) / NODE;
      if (searched(capacity, given)) {
        return best;
      }
      if (!hasTable) {
        relaxed = Optional.of(relax(capacity));
        searched(capacity, Math.max(0, work.left() / NODE));
        return best;
      }
      preferTable = table < 400_000;
      best = floor;
      bestTaken = new int[weight.length];
    }
    work.spend(table);
    fill((int) capacity);
    return best;
  }

  private boolean searched(long capacity, long given) {
    patience = given;
    search(0, capacity, 0);
    work.spend((given - Math.max(0, patience)) * NODE);
    return patience > 0;
  }

  private RelaxedKnapsack relax(long capacity) {
    var relaxation = new RelaxedKnapsack(capacity, candidates);
    for (int at = candidates - 1; at >= 0; at--) {
      relaxation.put(at, weight[order[at]], worth[order[at]], most[order[at]]);
    }
    work.spend(candidates * 2L * RelaxedKnapsack.GRAINS);
    return relaxation;
  }

  /** What pieces within a capacity are worth that a search of so many steps finds. */
  long good(long capacity, long steps) {
    taken = new int[weight.length];
    bestTaken = new int[weight.length];
    best = 0;
    found.clear();
    relaxed = Optional.empty();
    patience = steps;
    search(0, capacity, 0);
    work.spend((steps - Math.max(0, patience)) * NODE);
    return best;
  }

  /** How many of each kind the last {@link #best} takes; none when nothing is above the floor. */
  int[] pieces() {
    return bestTaken;
  }

  /** The best that was found last, and some that were the best before. */
  List<int[]> found() {
    return found.subList(Math.max(0, found.size() - 4), found.size());
  }

  private void search(int from, long room, long value) {
    if (value > best) {
      best = value;
      bestTaken = taken.clone();
      found.add(bestTaken);
    }
    for (int at = from; at < candidates && room >= lightest[at]; at++) {
      if (value + (long) (room * ratio[at]) <= best
          || value + room / lightest[at] * dearest[at] <= best
          || relaxed.isPresent() && value + relaxed.get().most(at, room) <= best
          || --patience < 0) {
        return;
      }
      int kind = order[at];
      if (weight[kind] <= room) {
        for (int n = (int) Math.min(most[kind], room / weight[kind]); n > 0; n--) {
          taken[kind] = n;
          search(at + 1, room - n * weight[kind], value + n * worth[kind]);
        }
        taken[kind] = 0;
      }
    }
  }

  private long tableSize(long capacity) {
    long parts = 0;
    for (int at = 0; at < candidates; at++) {
      long n = Math.min(most[order[at]], capacity / weight[order[at]]);
      parts += 64 - Long.numberOfLeadingZeros(n);
    }
    return parts * (capacity + 1);
  }

  /** So many of a kind as one; a bit for each capacity says whether the best there takes it. */
  private record Part(int kind, int count, long[] takes) {}

  private void fill(int capacity) {
    long[] value = new long[capacity + 1];
    var parts = new ArrayList<Part>();
    for (int at = 0; at < candidates; at++) {
      int kind = order[at];
      long left = Math.min(most[kind], capacity / weight[kind]);
      for (int count = 1; left > 0; count *= 2) {
        int n = (int) Math.min(count, left);
        left -= n;
        parts.add(new Part(kind, n, enter(value, (int) (n * weight[kind]), n * worth[kind])));
      }
    }
    if (value[capacity] > best) {
      best = value[capacity];
      found.add(bestTaken);
      take(parts, capacity);
    }
  }

  /** Takes a part wherever that is worth more; a bit for each capacity says where. */
  private static long[] enter(long[] value, int heavy, long gain) {
    long[] takes = new long[(value.length - 1) / 64 + 1];
    for (int c = value.length - 1; c >= heavy; c--) {
      long other = value[c - heavy] + gain;
      if (other > value[c]) {
        value[c] = other;
        takes[c >> 6] |= 1L << c;
      }
    }
    return takes;
  }

  private void take(List<Part> parts, int capacity) {
    int room = capacity;
    for (int p = parts.size() - 1; p >= 0; p--) {
      var part = parts.get(p);
      if ((part.takes[room >> 6] >> room & 1) != 0) {
        bestTaken[part.kind] += part.count;
        room -= (int) (part.count * weight[part.kind]);
      }
    }
  }
}
