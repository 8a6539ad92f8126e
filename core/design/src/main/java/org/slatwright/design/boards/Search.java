package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Fills given rows with as little waste as can be, by branch and bound: row after row, every way to
 * close it, given up as soon as no continuation can be worth more than the best choice so far. Rows
 * of one length are interchangeable, so that they only take ways in one order.
 */
final class Search {

  /** What is found: rows in the order asked for. */
  record Found(List<Draft.Row> rows, Worth worth) {}

  private final Stock stock;
  private final int[] rows;
  private final List<List<RowPattern>> ways;
  private final long kerf;
  private final long thicknessStep;
  private final Draft draft;
  private final List<Draft.Row> chosen = new ArrayList<>();

  /** How far the gaps of this row and those after it are off at least. */
  private final long[] gapsOffFrom;

  private long gapsOff;
  private long spread;
  private Optional<Found> best = Optional.empty();
  private long stepsLeft;

  /**
   * @param draft what is taken before; as it was when the search ends
   * @param rows the length of each, by index; equal ones together
   * @param ways to close a row, by length
   * @param steps after which the best found so far has to do
   */
  Search(Stock stock, Draft draft, int[] rows, List<List<RowPattern>> ways, long steps) {
    this.stock = stock;
    this.draft = draft;
    this.rows = rows;
    this.ways = ways.stream().map(Search::ordered).toList();
    this.kerf = stock.fit().rules().kerf().nanometres();
    this.thicknessStep = stock.fit().rules().thicknessStep().nanometres();
    this.stepsLeft = steps;
    this.gapsOffFrom = new long[rows.length + 1];
    for (int row = rows.length - 1; row >= 0; row--) {
      gapsOffFrom[row] = gapsOffFrom[row + 1] + leastGapsOff(rows[row]);
    }
  }

  private long leastGapsOff(int length) {
    return ways.get(length).stream().mapToLong(stock.fit()::gapsOff).min().orElse(0);
  }

  /** Whether the search ended before it had looked at everything. */
  boolean isCutShort() {
    return stepsLeft <= 0;
  }

  /** With at most that many slats ripped; empty when none was found. */
  Optional<Found> withRips(int most) {
    best = Optional.empty();
    row(0, most, 0);
    return best;
  }

  /** Those that take least wood first, so that more is left where a search is cut short. */
  private static List<RowPattern> ordered(List<RowPattern> ways) {
    return ways.stream()
        .sorted(Comparator.comparing(RowPattern::strips).thenComparing(RowPattern::width))
        .toList();
  }

  private void row(int row, int rips, int from) {
    if (row == rows.length) {
      keep();
      return;
    }
    int length = rows[row];
    List<RowPattern> of = ways.get(length);
    int first = row > 0 && rows[row - 1] == length ? from : 0;
    for (int way = first; way < of.size() && stepsLeft > 0; way++) {
      RowPattern pattern = of.get(way);
      stepsLeft--;
      if (pattern.strips() <= rips && draft.take(pattern, length)) {
        long off = stock.fit().gapsOff(pattern);
        gapsOff += off;
        spread += pattern.spread();
        if (isPromising(row)) {
          strip(new Row(row, way, pattern, rips), new ArrayList<>(), 0, 0);
        }
        gapsOff -= off;
        spread -= pattern.spread();
        draft.giveBack(pattern, length);
      }
    }
  }

  /** The row that is being filled. */
  private record Row(int index, int way, RowPattern pattern, int rips) {}

  /**
   * Rips the next strip: first from pieces already ripped, then from new ones; in that order, so
   * that no two ways differ in the order of their strips alone.
   */
  private void strip(Row row, List<Rips.Piece> sources, int fromPiece, int fromKind) {
    int length = rows[row.index()];
    if (sources.size() == row.pattern().strips()) {
      chosen.add(new Draft.Row(length, row.pattern(), List.copyOf(sources)));
      row(row.index() + 1, row.rips() - row.pattern().strips(), row.way());
      chosen.remove(chosen.size() - 1);
      return;
    }
    long width = row.pattern().leastStrip();
    for (int i = fromPiece; i < draft.ripped().size(); i++) {
      Rips.Piece piece = draft.ripped().get(i);
      if (piece.length == length && piece.has(width) && matches(row, sources, piece.kind)) {
        add(row, sources, piece, i, fromKind);
      }
    }
    for (int kind = fromKind; kind < stock.kinds().size(); kind++) {
      Rips.Piece piece = new Rips.Piece(kind, length, draft.kind(kind).width(), kerf);
      if (draft.kind(kind).width() > width
          && matches(row, sources, kind)
          && draft.startRipping(piece)) {
        if (isPromising(row.index())) {
          add(row, sources, piece, draft.ripped().size() - 1, kind);
        }
        draft.stopRipping();
      }
    }
  }

  private void add(
      Row row, List<Rips.Piece> sources, Rips.Piece piece, int fromPiece, int fromKind) {
    if (stepsLeft-- > 0) {
      piece.add(row.pattern().leastStrip());
      sources.add(piece);
      strip(row, sources, fromPiece, fromKind);
      sources.remove(sources.size() - 1);
      piece.remove(row.pattern().leastStrip());
    }
  }

  private boolean matches(Row row, List<Rips.Piece> sources, int kind) {
    long thickness = draft.kind(kind).thickness();
    long thinnest = Math.min(thickness, row.pattern().thinnest());
    long thickest = Math.max(thickness, row.pattern().thickest());
    for (Rips.Piece source : sources) {
      thinnest = Math.min(thinnest, draft.kind(source.kind).thickness());
      thickest = Math.max(thickest, draft.kind(source.kind).thickness());
    }
    return thickest - thinnest <= thicknessStep;
  }

  /** Whether a choice with the rows so far, up to this one, could be better than the best. */
  private boolean isPromising(int row) {
    Worth atBest = new Worth(draft.costFrom(), gapsOff + gapsOffFrom[row + 1], spread);
    return isBetter(atBest);
  }

  private void keep() {
    Worth worth = new Worth(draft.cost(), gapsOff, spread);
    if (isBetter(worth)) {
      best = Optional.of(new Found(List.copyOf(chosen), worth));
    }
  }

  private boolean isBetter(Worth worth) {
    return best.map(found -> worth.compareTo(found.worth()) < 0).orElse(true);
  }
}
