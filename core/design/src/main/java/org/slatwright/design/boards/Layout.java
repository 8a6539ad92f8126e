package org.slatwright.design.boards;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.BoardChoice.Slat;
import org.slatwright.design.boards.BoardChoice.Source;

/**
 * Says where on the boards the chosen slats are cut: from the start of each clear stretch, the
 * longest first, a kerf between two.
 */
final class Layout {

  /** A piece as long as a slat and as wide as its board. */
  private record Place(int board, Length from) {}

  private final Stock stock;
  private final RowRules rules;
  private final Draft draft;

  /** What is not yet used, by kind and length. */
  private final List<List<Deque<Place>>> places = new ArrayList<>();

  private final Map<Rips.Piece, Place> ripped = new IdentityHashMap<>();
  private final Map<Rips.Piece, Length> across = new IdentityHashMap<>();

  /**
   * @param draft that has taken all of the rows
   */
  Layout(Stock stock, Draft draft, List<Board> boards) {
    this.stock = stock;
    this.rules = stock.fit().rules();
    this.draft = draft;
    for (int kind = 0; kind < stock.kinds().size(); kind++) {
      List<Deque<Place>> ofKind = new ArrayList<>();
      stock.lengths().forEach(length -> ofKind.add(new ArrayDeque<>()));
      for (Kind.Cut cut : draft.kind(kind).cut(draft.taken(kind))) {
        cut(cut, boards.get(cut.board()), ofKind);
      }
      places.add(ofKind);
    }
  }

  private void cut(Kind.Cut cut, Board board, List<Deque<Place>> places) {
    for (int s = 0; s < board.clear().size(); s++) {
      Length from = board.clear().get(s).from();
      for (int length = 0; length < places.size(); length++) {
        for (int n = 0; n < cut.cut().stretches().get(s).get(length); n++) {
          places.get(length).add(new Place(cut.board(), from));
          from = from.plus(stock.lengths().get(length)).plus(rules.kerf());
        }
      }
    }
  }

  /** The row, with its slats taken from what is not yet used. */
  BoardChoice.Row row(RowNeed need, Draft.Row row) {
    List<Slat> slats = new ArrayList<>();
    RowPattern pattern = row.pattern();
    for (int i = 0; i < pattern.kinds().length; i++) {
      for (int n = 0; n < pattern.counts()[i]; n++) {
        slats.add(whole(pattern.kinds()[i], row.length()));
      }
    }
    long strip = stripWidth(row);
    for (Rips.Piece piece : row.strips()) {
      slats.add(ripped(piece, new Length(strip)));
    }
    for (int n = row.strips().size(); n < pattern.strips(); n++) {
      Length thickness = new Length(MissingSlats.thickness(stock, pattern));
      slats.add(new Slat(need.length(), new Length(strip), thickness, Optional.empty()));
    }
    slats.sort(Comparator.comparing(Slat::width).thenComparing(Slat::thickness).reversed());
    RowFit.Spacing spacing =
        stock.fit().spacing(slats.size(), pattern.width() + pattern.strips() * strip);
    return new BoardChoice.Row(
        need,
        slats,
        spacing.gap(),
        spacing.frontMargin(),
        spacing.backMargin(),
        row.isFilled()
            ? Optional.empty()
            : Optional.of(MissingSlats.room(stock, pattern, new Length(strip))));
  }

  private Slat whole(int kind, int length) {
    Place place = places.get(kind).get(length).remove();
    return slat(kind, length, new Length(draft.kind(kind).width()), place, Length.ZERO, false);
  }

  private Slat ripped(Rips.Piece piece, Length width) {
    Place place = ripped.computeIfAbsent(piece, p -> places.get(p.kind).get(p.length).remove());
    Length from = across.getOrDefault(piece, Length.ZERO);
    across.put(piece, from.plus(width).plus(rules.kerf()));
    return slat(piece.kind, piece.length, width, place, from, true);
  }

  private Slat slat(int kind, int length, Length width, Place place, Length from, boolean ripped) {
    return new Slat(
        stock.lengths().get(length),
        width,
        new Length(draft.kind(kind).thickness()),
        Optional.of(new Source(place.board(), place.from(), from, ripped)));
  }

  /**
   * As wide as makes the gap the middle one, so far as the row and the ripped pieces have room; the
   * pieces had room for the narrowest strip.
   */
  private long stripWidth(Draft.Row row) {
    RowPattern pattern = row.pattern();
    if (pattern.strips() == 0) {
      return 0;
    }
    long wished = row.isFilled() ? stock.fit().middleStrip(pattern) : stock.commonest().width();
    long most = Math.min(pattern.mostStrip(), roomFor(row));
    long wide = Math.max(pattern.leastStrip(), Math.min(most, wished));
    long snapped = new Length(wide).snappedDown(rules.increment()).nanometres();
    long width = snapped >= pattern.leastStrip() ? snapped : wide;
    row.strips().forEach(piece -> piece.remove(pattern.leastStrip()));
    row.strips().forEach(piece -> piece.add(width));
    return width;
  }

  /** The widest strip that each piece could give in place of the narrowest one. */
  private long roomFor(Draft.Row row) {
    long least = row.pattern().leastStrip();
    return row.strips().stream()
        .mapToLong(
            piece ->
                Math.min(
                    least + piece.free() / row.strips().stream().filter(p -> p == piece).count(),
                    draft.kind(piece.kind).width() - 1))
        .min()
        .orElse(Long.MAX_VALUE);
  }
}
