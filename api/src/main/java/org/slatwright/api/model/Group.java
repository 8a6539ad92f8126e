package org.slatwright.api.model;

import java.util.List;

/**
 * Pieces that are built as one: a frame or a shelf.
 *
 * @param id unique in the rack: {@code frame-1} from the left, {@code shelf-1} from the floor
 * @param kind frame or shelf
 * @param pieces its pieces, dowels among them
 */
public record Group(String id, Kind kind, List<Piece> pieces) {

  public Group {
    pieces = List.copyOf(pieces);
  }

  /** What is built. */
  public enum Kind {
    FRAME,
    SHELF
  }
}
