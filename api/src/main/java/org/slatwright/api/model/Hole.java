package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * A round hole, drilled square to a face.
 *
 * @param name unique within its part, short: {@code a}, {@code b}, …
 * @param face the face that the drill enters
 * @param along from the start end to the centre; on an end, from the face edge
 * @param across from the face edge to the centre; on edges and ends, from the back
 * @param diameter of the bit
 * @param depth from the face to the end of the full diameter; the whole way when {@code through}
 * @param through whether it comes out on the other side
 */
public record Hole(
    String name,
    Face face,
    Length along,
    Length across,
    Length diameter,
    Length depth,
    boolean through) {}
