package org.slatwright.design.packing;

/**
 * Where a shape lies.
 *
 * @param sheet on which sheet, from 0
 * @param xMm of the lower left corner of its box as it lies, a whole number of nanometres
 * @param yMm of that corner, likewise
 * @param quarterTurns by how many quarter turns counter-clockwise it is turned, 0 to 3
 */
public record Spot(int sheet, double xMm, double yMm, int quarterTurns) {}
