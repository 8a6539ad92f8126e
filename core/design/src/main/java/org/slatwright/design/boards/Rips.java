package org.slatwright.design.boards;

import org.slatwright.api.measure.Length;

/**
 * How slats are ripped from wider pieces: side by side from one edge, a kerf between two, the
 * outermost edge being the board's own. The pieces are cut to length first, so that a strip is as
 * long as the slat it becomes; strips of one row are all of one width, so that the fence is set
 * once.
 */
final class Rips {

  /** What is narrower is no slat: common practice, no source. */
  static final Length LEAST_WIDTH = Length.mm(40);

  private Rips() {}

  /** A piece that is ripped: what is still free beside the strips. */
  static final class Piece {
    final int kind;
    final int length;
    private final long width;
    private final long kerf;
    private long free;
    private int strips;

    Piece(int kind, int length, long width, long kerf) {
      this.kind = kind;
      this.length = length;
      this.width = width;
      this.kerf = kerf;
      this.free = width;
    }

    /** Whole again. */
    void clear() {
      free = width;
      strips = 0;
    }

    /** How wide the strips could become together. */
    long free() {
      return free - (strips > 0 ? (strips - 1) * kerf : 0);
    }

    boolean has(long strip) {
      return free - strips * kerf >= strip;
    }

    void add(long strip) {
      free -= strip;
      strips++;
    }

    void remove(long strip) {
      free += strip;
      strips--;
    }
  }
}
