package org.slatwright.api.plan;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Stock;

/**
 * A piece that the build wants and the rack does not keep, such as a spacer block.
 *
 * @param mark unique in the plan, pencilled on it: {@code X1}
 * @param name what it is: {@code spacer as wide as the interior}
 * @param use what it is for, in a sentence
 * @param stock what it is cut from
 * @param length of each
 * @param wanted how many
 * @param fromOffcuts how many of them come from offcuts; the others want a piece of scrap
 */
public record SparePiece(
    String mark,
    String name,
    String use,
    Stock stock,
    Length length,
    int wanted,
    int fromOffcuts) {}
