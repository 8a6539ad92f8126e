package org.slatwright.design.cuttingstock;

/**
 * What pieces can be worth at most in any room, for those of a list from any place on: the knapsack
 * with all weights and rooms rounded down to whole grains, by dynamic programming.
 */
final class RelaxedKnapsack {

  static final int GRAINS = 4096;

  private final long grain;
  private final long[][] most;

  RelaxedKnapsack(long capacity, int pieces) {
    this.grain = capacity / GRAINS + 1;
    this.most = new long[pieces + 1][GRAINS + 1];
  }

  /** Puts a kind in the list, the last one first. */
  void put(int at, long weight, long worth, int count) {
    int grains = (int) Math.min(GRAINS + 1, weight / grain);
    long[] after = most[at + 1];
    long[] here = most[at];
    for (int room = 0; room <= GRAINS; room++) {
      here[room] = after[room] + (grains == 0 ? worth * count : 0);
      for (int n = 1; grains > 0 && n <= count && n * grains <= room; n++) {
        here[room] = Math.max(here[room], after[room - n * grains] + n * worth);
      }
    }
  }

  long most(int at, long room) {
    return most[at][(int) (room / grain)];
  }
}
