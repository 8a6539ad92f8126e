package org.slatwright.design.boards;

import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * How slats lie in a row: front margin + Σ widths + (count - 1) × gap + back margin = rail.
 *
 * @param rail what a row lies on, from the front back
 * @param leastGap between two slats
 * @param mostGap between two slats
 * @param mostMargin at the back, and so at the front, which is no wider
 * @param count of slats in each row, where the maker says it
 * @param thicknessStep the most that two slats of a row may differ in thickness
 * @param increment that gaps are multiples of; what is left goes to the margins, the larger half to
 *     the back
 * @param kerf of the saw
 */
public record RowRules(
    Length rail,
    Length leastGap,
    Length mostGap,
    Length mostMargin,
    Optional<Integer> count,
    Length thicknessStep,
    Length increment,
    Length kerf) {}
