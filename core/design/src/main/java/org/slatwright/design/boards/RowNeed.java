package org.slatwright.design.boards;

import org.slatwright.api.measure.Length;

/**
 * A row of slats side by side: those of one shelf in one bay, or of one shelf over all bays where
 * slats run through.
 *
 * @param shelf counted from the floor, 0 is the lowest
 * @param run counted from the left, 0 is the first
 * @param length of each of its slats
 */
public record RowNeed(int shelf, int run, Length length) {}
