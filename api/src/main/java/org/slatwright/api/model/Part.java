package org.slatwright.api.model;

import java.util.List;

/**
 * One kind of part: every piece of it is cut and drilled alike.
 *
 * @param mark the shop mark, unique in the rack and pencilled on every piece: {@code U}, {@code R}
 * @param name in words: {@code upright}
 * @param role what it does in the rack
 * @param shape exact size, before drilling
 * @param material timber
 * @param grain direction of the fibres
 * @param holes in the order to drill them, named uniquely
 * @param quantity how many pieces the whole rack has
 */
public record Part(
    String mark,
    String name,
    Role role,
    Shape shape,
    Material material,
    Grain grain,
    List<Hole> holes,
    int quantity) {

  public Part {
    holes = List.copyOf(holes);
    if (quantity < 1) {
      throw new IllegalArgumentException(
          "part " + mark + ": quantity must be >= 1, was " + quantity);
    }
    if (holes.stream().map(Hole::name).distinct().count() != holes.size()) {
      throw new IllegalArgumentException("part " + mark + ": two holes share a name");
    }
  }

  /** The hole of that name. */
  public Hole hole(String holeName) {
    return holes.stream()
        .filter(hole -> hole.name().equals(holeName))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("part " + mark + " has no hole " + holeName));
  }
}
