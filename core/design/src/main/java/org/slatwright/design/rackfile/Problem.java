package org.slatwright.design.rackfile;

import java.util.List;

/**
 * Something wrong with a rack file or the design it asks for.
 *
 * @param place where to look
 * @param message what was read and what would be right
 * @param changes each single change that would put it right, as {@code key=value} for {@code --set}
 *     and a few words; empty when there is none to name
 */
public record Problem(Place place, String message, List<Change> changes) {

  public Problem {
    changes = List.copyOf(changes);
  }

  /** Without a change to propose. */
  public Problem(Place place, String message) {
    this(place, message, List.of());
  }

  /**
   * One change that is enough by itself.
   *
   * @param setting {@code rack.upright=1488}, as {@code --set} takes it
   * @param words what that means: {@code uprights of 1488 mm}
   */
  public record Change(String setting, String words) {}
}
