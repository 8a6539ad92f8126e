package org.slatwright.design.packing;

/**
 * Where a shape lies.
 *
 * @param sheet on which sheet, from 0
 * @param xMm of the lower left corner of its box as it lies
 * @param yMm of that corner
 * @param turned whether it lies turned a quarter counter-clockwise
 */
public record Spot(int sheet, double xMm, double yMm, boolean turned) {}
