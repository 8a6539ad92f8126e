package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * A hole of a placed piece as it stands in the rack.
 *
 * @param mouth the centre of the hole on the face that the drill enters, in rack coordinates
 * @param inward the way that the drill goes
 * @param diameter of the bit
 * @param depth from the mouth
 */
public record Bore(Point3 mouth, Direction inward, Length diameter, Length depth) {}
