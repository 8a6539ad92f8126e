package org.slatwright.api.plan;

import java.math.BigDecimal;
import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * One line of the buying list.
 *
 * @param what in words: {@code norway spruce, frame stock 44 × 44 mm}, {@code brad 40 × 1.2 mm}
 * @param quantity how many; empty for what is sold by length or weight alone
 * @param length of each, or in all where there is no quantity; empty for what has none
 * @param price of one; empty when the rack file gives none
 * @param cost of all of them; empty when the rack file gives no price
 * @param note what else to know, or empty
 */
public record Purchase(
    String what,
    Optional<Integer> quantity,
    Optional<Length> length,
    Optional<BigDecimal> price,
    Optional<BigDecimal> cost,
    String note) {}
