package org.slatwright.api.plan;

import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * How many of a thing that the rack must hold go on one shelf of one bay, and what is left over.
 *
 * @param thing what it is called
 * @param shelf counted from the floor, 1 is the lowest
 * @param turned whether it lies with its depth along the shelf
 * @param across how many side by side in a bay; 0 when it is too wide
 * @param deep how many front to back; 0 when it is too deep
 * @param high how many on top of one another; 0 when it is too high, empty where nothing is above
 * @param spareAcross what is left beside them; negative is what one lacks
 * @param spareDeep what is left before and behind them; negative is what one lacks
 * @param spareAbove what is left above them; negative is what one lacks, empty where nothing is
 *     above
 * @param enough whether that is as many as the rack file asks for
 */
public record Fit(
    String thing,
    int shelf,
    boolean turned,
    int across,
    int deep,
    Optional<Integer> high,
    Length spareAcross,
    Length spareDeep,
    Optional<Length> spareAbove,
    boolean enough) {}
