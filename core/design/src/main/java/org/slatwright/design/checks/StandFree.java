package org.slatwright.design.checks;

import java.util.List;

/** What to do about a rack that tips too easily. */
final class StandFree {

  /** What says in a rack file that it is done. */
  static final String ANCHORED = "rack.stands=anchored";

  private StandFree() {}

  /**
   * To anchor it, which always helps, or to change its sizes so that it stands free.
   *
   * @param settings that do so together; none where there are no reasonable ones
   */
  static String orAnchor(List<String> settings) {
    return settings.isEmpty()
        ? "anchor it to the wall"
        : "anchor it to the wall; to stand free, set " + String.join(" and ", settings);
  }
}
