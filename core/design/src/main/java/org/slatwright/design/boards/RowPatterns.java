package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.List;

/**
 * Every way to close a row with the pieces at hand, up to a number of ways that is looked through
 * in a moment. Few kinds come first, so that where some ways are left out, no kind is.
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
  static List<RowPattern> of(Stock stock, int[] available, Strips strips, int limit) {
    RowPatterns patterns = new RowPatterns(stock, available, strips, limit);
    patterns.look(RowPattern.EMPTY);
    for (int kinds = 1; kinds <= available.length; kinds++) {
      int before = patterns.looked;
      patterns.extend(RowPattern.EMPTY, 0, kinds);
      if (patterns.looked == before) {
        break;
      }
    }
    return patterns.found;
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
