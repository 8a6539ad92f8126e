package org.slatwright.design.cutting;

import org.slatwright.api.measure.Length;

/**
 * A straight stretch of a board in which pieces are cut one after the other.
 *
 * @param from where the first piece may begin, along the board
 * @param to where the last piece must end
 * @param tail where the wood ends: {@code to} and what is squared off there
 * @param across where it begins, across the board
 * @param width across the board
 */
record Lane(Length from, Length to, Length tail, Length across, Length width) {}
