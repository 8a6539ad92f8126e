package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Every way to close a row with the pieces at hand, up to a number of ways that is looked through
 * in a moment. Few kinds come first, so that where some ways are left out, no kind is; and where
 * boards are all of different kinds, pieces that are next to each other in width join them.
 */
final class RowPatterns {

  /**
   * What strips may be.
   *
   * @param most how many
   * @param least wide
   * @param widest wide
   */
  record Strips(int most, long least, long widest) {
    static final Strips NONE = new Strips(0, 0, 0);
  }

  private final Stock stock;
  private final int[] available;
  private final Strips strips;
  private final long thicknessStep;
  private final int limit;
  private final List<RowPattern> found = new ArrayList<>();
  private int looked;
  private int mostKinds;

  private RowPatterns(Stock stock, int[] available, Strips strips, int limit) {
    this.stock = stock;
    this.available = available;
    this.strips = strips;
    this.thicknessStep = stock.fit().rules().thicknessStep().nanometres();
    this.limit = limit;
  }

  /**
   * @param available of each kind
   * @param limit of how many sets of pieces are looked at
   */
  static RowPatterns of(Stock stock, int[] available, Strips strips, int limit) {
    RowPatterns patterns = new RowPatterns(stock, available, strips, limit);
    patterns.look(RowPattern.EMPTY);
    for (int kinds = 1; kinds <= available.length; kinds++) {
      int before = patterns.looked;
      patterns.extend(RowPattern.EMPTY, 0, kinds);
      if (patterns.looked == before) {
        break;
      }
      if (!patterns.isCutShort()) {
        patterns.mostKinds = kinds;
      }
    }
    if (patterns.isCutShort()) {
      patterns.lookAtNeighbours();
    }
    return patterns;
  }

  List<RowPattern> found() {
    return found;
  }

  /** Whether there are more ways than were looked at. */
  boolean isCutShort() {
    return looked >= limit;
  }

  private void lookAtNeighbours() {
    Set<List<Integer>> seen = new HashSet<>();
    for (Kind thinnest : stock.kinds()) {
      List<Integer> pieces = piecesFrom(thinnest.thickness());
      if (seen.add(pieces)) {
        for (int from = 0; from < pieces.size(); from++) {
          lookAtNeighbours(pieces.subList(from, pieces.size()));
        }
      }
    }
  }

  /** The first, the first two, and so on. */
  private void lookAtNeighbours(List<Integer> pieces) {
    for (int count = 1; count <= Math.min(pieces.size(), stock.mostSlats()); count++) {
      RowPattern pattern = RowPattern.of(stock, pieces.subList(0, count));
      if (pattern.kinds().length > mostKinds) {
        look(pattern);
      }
    }
  }

  /** The kind of each piece that is so thick or a step thicker, the widest first. */
  private List<Integer> piecesFrom(long thinnest) {
    return IntStream.range(0, available.length)
        .filter(kind -> stock.kinds().get(kind).thickness() >= thinnest)
        .filter(kind -> stock.kinds().get(kind).thickness() - thinnest <= thicknessStep)
        .boxed()
        .flatMap(kind -> Collections.nCopies(available[kind], kind).stream())
        .toList();
  }

  private void extend(RowPattern pattern, int from, int more) {
    for (int kind = from; kind < available.length; kind++) {
      for (int count = 1; count <= available[kind] && looked < limit; count++) {
        RowPattern longer = pattern.with(kind, stock.kinds().get(kind), count);
        if (!isPossible(longer)) {
          break;
        }
        if (more == 1) {
          look(longer);
        } else {
          extend(longer, kind + 1, more - 1);
        }
      }
    }
  }

  private boolean isPossible(RowPattern pattern) {
    return pattern.spread() <= thicknessStep
        && pattern.width() <= stock.fit().most(pattern.pieces())
        && (stock.fit().allows(pattern.pieces()) || stock.fit().allowsMoreThan(pattern.pieces()));
  }

  private void look(RowPattern pattern) {
    looked++;
    if (stock.fit().closes(pattern.pieces(), pattern.width())) {
      found.add(pattern);
    }
    for (int many = 1; many <= strips.most(); many++) {
      int slats = pattern.pieces() + many;
      if (stock.fit().allows(slats)) {
        long missing = stock.fit().least(slats) - pattern.width();
        long least = Math.max(strips.least(), -Math.floorDiv(-missing, many));
        long room = Math.floorDiv(stock.fit().most(slats) - pattern.width(), many);
        long most = Math.min(strips.widest(), room);
        if (least <= most) {
          found.add(pattern.withStrips(many, least, most));
        }
      }
    }
  }
}
