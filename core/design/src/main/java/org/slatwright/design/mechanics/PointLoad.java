package org.slatwright.design.mechanics;

/**
 * A load on one place of a beam.
 *
 * @param at from the left end of the beam, mm
 * @param force downwards, N
 */
public record PointLoad(double at, double force) {}
