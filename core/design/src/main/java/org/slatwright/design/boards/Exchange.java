package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Makes rows better where there are too many ways to try them all: slats change places with those
 * of another row or with what is left over, one at a time. What is worse is taken too as long as it
 * is no worse than some changes ago, so that the way out of a dead end is found (late acceptance
 * hill climbing: Burke and Bykov, 2017). The changes are the same ones each time.
 */
final class Exchange {

  /** Changes that are tried; each takes about a microsecond. */
  private static final int CHANGES = 100_000;

  /** How many changes ago what is taken has to be better than. */
  private static final int MEMORY = 1_000;

  /** Whole slats that are to lie together, and how far they are from closing a row. */
  private final class Row {
    private final int length;
    private final List<Integer> kinds;
    private long open;
    private long gapsOff;
    private long spread;

    Row(int length, List<Integer> kinds) {
      this.length = length;
      this.kinds = new ArrayList<>(kinds);
      measure();
    }

    private void measure() {
      long width = 0;
      long thinnest = Long.MAX_VALUE;
      long thickest = Long.MIN_VALUE;
      for (int kind : kinds) {
        width += draft.kind(kind).width();
        thinnest = Math.min(thinnest, draft.kind(kind).thickness());
        thickest = Math.max(thickest, draft.kind(kind).thickness());
      }
      int count = kinds.size();
      RowFit fit = stock.fit();
      spread = count == 0 ? 0 : thickest - thinnest;
      gapsOff = fit.gapsOff(count, width);
      open =
          Math.max(0, fit.least(count) - width)
              + Math.max(0, width - fit.most(count))
              + Math.max(0, spread - fit.rules().thicknessStep().nanometres());
    }
  }

  /** A slat of a kind that goes into a row or out of it. */
  private record Step(Row row, int kind, boolean in) {
    Step back() {
      return new Step(row, kind, !in);
    }
  }

  /** How good all rows are: first of all, how far from closing. */
  private record Score(long open, Worth worth) implements Comparable<Score> {
    @Override
    public int compareTo(Score other) {
      return Comparator.comparingLong(Score::open).thenComparing(Score::worth).compare(this, other);
    }
  }

  private final Stock stock;
  private final Draft draft;
  private final List<Row> rows = new ArrayList<>();

  /** Rows with ripped slats, which stay as they are. */
  private final List<Draft.Row> kept = new ArrayList<>();

  private final Random random = new Random(1);

  private Exchange(Stock stock, List<Draft.Row> filled) {
    this.stock = stock;
    this.draft = new Draft(stock);
    for (Draft.Row row : filled) {
      draft.fill(row);
      if (row.strips().isEmpty()) {
        rows.add(new Row(row.length(), row.pattern().pieceKinds()));
      } else {
        kept.add(row);
      }
    }
  }

  /**
   * At least as good: with more rows filled, fewer slats ripped, less waste or gaps that are nearer
   * the middle.
   *
   * @param asked the length of each row, by index, the lowest shelf first
   * @param filled some of them
   */
  static List<Draft.Row> improve(Stock stock, List<Integer> asked, List<Draft.Row> filled) {
    List<Draft.Row> best = filled;
    for (Draft.Row row : filled) {
      if (!row.strips().isEmpty()) {
        List<Draft.Row> others = new ArrayList<>(best);
        others.remove(row);
        best = withOneMore(stock, others, row.length(), best);
      }
    }
    Set<Integer> failed = new HashSet<>();
    for (int length : open(asked, filled)) {
      int before = best.size();
      best = failed.contains(length) ? best : withOneMore(stock, best, length, best);
      if (best.size() == before) {
        failed.add(length);
      }
    }
    Exchange exchange = new Exchange(stock, best);
    exchange.change(false);
    return exchange.filled();
  }

  private static List<Integer> open(List<Integer> asked, List<Draft.Row> filled) {
    List<Integer> open = new ArrayList<>(asked);
    filled.forEach(row -> open.remove((Integer) row.length()));
    return open;
  }

  /** One more row of whole slats where that can be found, or else what there is. */
  private static List<Draft.Row> withOneMore(
      Stock stock, List<Draft.Row> rows, int length, List<Draft.Row> otherwise) {
    Exchange exchange = new Exchange(stock, rows);
    if (!exchange.begin(length)) {
      return otherwise;
    }
    exchange.change(true);
    return exchange.score().open() == 0 ? exchange.filled() : otherwise;
  }

  /** Puts any slats together as one more row, as many as usual; whether there are so many. */
  private boolean begin(int length) {
    int count = stock.fit().rules().count().orElseGet(this::usualCount);
    List<Integer> kinds = new ArrayList<>();
    for (int kind = 0; kind < stock.kinds().size(); kind++) {
      while (kinds.size() < count && draft.take(kind, length, 1)) {
        kinds.add(kind);
      }
    }
    rows.add(new Row(length, kinds));
    return kinds.size() == count && count > 0;
  }

  /** Slats as wide as most boards, with middle gaps. */
  private int usualCount() {
    long gap = stock.fit().middleGap();
    return (int) Math.max(1, (stock.fit().rail() + gap) / (stock.commonest().width() + gap));
  }

  private List<Draft.Row> filled() {
    List<Draft.Row> filled = new ArrayList<>(kept);
    for (Row row : rows) {
      List<Integer> kinds = row.kinds.stream().sorted().toList();
      filled.add(new Draft.Row(row.length, RowPattern.of(stock, kinds), List.of()));
    }
    return filled;
  }

  private void change(boolean untilAllClose) {
    Score now = score();
    Score best = now;
    List<Step> sinceBest = new ArrayList<>();
    Score[] before = new Score[MEMORY];
    Arrays.fill(before, now);
    int changes = rows.isEmpty() ? 0 : CHANGES;
    for (int i = 0; i < changes && !(untilAllClose && best.open() == 0); i++) {
      List<Step> steps = any();
      if (!steps.isEmpty() && doAll(steps)) {
        Score next = score();
        if (next.compareTo(now) <= 0 || next.compareTo(before[i % MEMORY]) <= 0) {
          now = next;
          sinceBest.addAll(steps);
        } else {
          undo(steps);
        }
      }
      if (now.compareTo(best) < 0) {
        best = now;
        sinceBest.clear();
      }
      before[i % MEMORY] = now;
    }
    undo(sinceBest);
  }

  private Score score() {
    long open = 0;
    long gapsOff = 0;
    long spread = 0;
    for (Row row : rows) {
      open += row.open;
      gapsOff += row.gapsOff;
      spread += row.spread;
    }
    return new Score(open, new Worth(draft.cost(), gapsOff, spread));
  }

  /** A change, as the dice fall. */
  private List<Step> any() {
    Row row = rows.get(random.nextInt(rows.size()));
    Row other = rows.get(random.nextInt(rows.size()));
    int out = row.kinds.get(random.nextInt(row.kinds.size()));
    int in = random.nextInt(stock.kinds().size());
    boolean free = stock.fit().rules().count().isEmpty();
    int dice = random.nextInt(free ? 10 : 8);
    if (dice == 8) {
      return List.of(new Step(row, in, true));
    }
    if (dice == 9) {
      return row.kinds.size() == 1 ? List.of() : List.of(new Step(row, out, false));
    }
    if (dice < 4 || row == other || row.length != other.length) {
      return List.of(new Step(row, out, false), new Step(row, in, true));
    }
    return swap(row, out, other, other.kinds.get(random.nextInt(other.kinds.size())));
  }

  private static List<Step> swap(Row row, int kind, Row other, int otherKind) {
    return kind == otherKind
        ? List.of()
        : List.of(
            new Step(row, kind, false),
            new Step(other, otherKind, false),
            new Step(row, otherKind, true),
            new Step(other, kind, true));
  }

  /** Whether all could be done; does nothing otherwise. */
  private boolean doAll(List<Step> steps) {
    for (int i = 0; i < steps.size(); i++) {
      if (!doIt(steps.get(i))) {
        undo(steps.subList(0, i));
        return false;
      }
    }
    return true;
  }

  private void undo(List<Step> steps) {
    for (int i = steps.size() - 1; i >= 0; i--) {
      doIt(steps.get(i).back());
    }
  }

  private boolean doIt(Step step) {
    Row row = step.row();
    if (!draft.take(step.kind(), row.length, step.in() ? 1 : -1)) {
      return false;
    }
    if (step.in()) {
      row.kinds.add(step.kind());
    } else {
      row.kinds.remove((Integer) step.kind());
    }
    row.measure();
    return true;
  }
}
