package org.slatwright.api.plan;

import org.slatwright.api.measure.Length;

/**
 * Pieces that no board is left for.
 *
 * @param mark of their part
 * @param count how many
 * @param length of each
 * @param width of each
 * @param thickness of each
 */
public record MissingPieces(
    String mark, int count, Length length, Length width, Length thickness) {}
