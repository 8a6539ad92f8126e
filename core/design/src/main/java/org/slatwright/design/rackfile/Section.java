package org.slatwright.design.rackfile;

import org.slatwright.api.measure.Length;

/**
 * The section of a piece of stock, in the order that its key states.
 *
 * @param first width across the frame; thickness of a slat
 * @param second depth of an upright, height of a rail, width of a slat
 */
public record Section(Length first, Length second) {}
