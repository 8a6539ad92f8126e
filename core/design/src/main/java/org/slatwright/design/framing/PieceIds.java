package org.slatwright.design.framing;

import java.util.HashMap;
import java.util.Map;
import org.slatwright.api.model.Part;

/** Numbers the pieces of each part from 1, in the order that they are placed. */
final class PieceIds {

  private final Map<String, Integer> lastByMark = new HashMap<>();

  /** The id of the next piece of {@code part}. */
  String next(Part part) {
    return part.mark() + "-" + lastByMark.merge(part.mark(), 1, Integer::sum);
  }
}
