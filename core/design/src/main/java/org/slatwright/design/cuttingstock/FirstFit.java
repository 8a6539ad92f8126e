package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;

/**
 * First fit decreasing: the longest piece first, into the first stock length cut into that still
 * has room, else into a new one. Where several stock lengths would do, a new one is the one with
 * the least price for its length; at last each is exchanged for the cheapest that its pieces fit.
 */
final class FirstFit {

  private final Job job;
  private final int[] left;
  private final List<Board> boards = new ArrayList<>();

  private FirstFit(Job job, int[] available) {
    this.job = job;
    this.left = available.clone();
  }

  /** A plan of the whole job. */
  static Plan plan(Job job) {
    return Plan.of(plan(job, job.demand, job.available));
  }

  /** How to cut what is left to cut from the stock that is left, board by board. */
  static List<Plan.Cut> plan(Job job, int[] demand, int[] available) {
    var fit = new FirstFit(job, available);
    for (int i = 0; i < job.kinds(); i++) {
      for (int n = 0; n < demand[i]; n++) {
        fit.place(i);
      }
    }
    var cuts = new ArrayList<Plan.Cut>();
    for (var board : fit.boards) {
      fit.exchange(board);
      cuts.add(new Plan.Cut(board.stock, board.pieces, 1));
    }
    return cuts;
  }

  private void place(int kind) {
    for (var board : boards) {
      if (board.room >= job.weight[kind]) {
        board.put(kind);
        return;
      }
    }
    int best = -1;
    for (int k = 0; k < job.stocks(); k++) {
      if (left[k] > 0 && job.capacity[k] >= job.weight[kind] && (best < 0 || cheaper(k, best))) {
        best = k;
      }
    }
    if (best >= 0) {
      left[best]--;
      boards.add(new Board(best));
      boards.get(boards.size() - 1).put(kind);
    }
  }

  private boolean cheaper(int one, int other) {
    return (double) job.price[one] / job.capacity[one]
        < (double) job.price[other] / job.capacity[other];
  }

  private void exchange(Board board) {
    long full = job.capacity[board.stock] - board.room;
    for (int k = 0; k < job.stocks(); k++) {
      if (left[k] > 0 && job.capacity[k] >= full && job.price[k] < job.price[board.stock]) {
        left[board.stock]++;
        left[k]--;
        board.stock = k;
        board.room = job.capacity[k] - full;
      }
    }
  }

  private final class Board {
    private int stock;
    private long room;
    private final int[] pieces = new int[job.kinds()];

    Board(int stock) {
      this.stock = stock;
      this.room = job.capacity[stock];
    }

    void put(int kind) {
      room -= job.weight[kind];
      pieces[kind]++;
    }
  }
}
