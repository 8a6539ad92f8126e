/**
 * The neutral part-geometry model of a rack: what a 3-D, drawing or table exporter needs, exact.
 *
 * <p>Read {@link org.slatwright.api.model.Assembly} first: it holds the unique {@link
 * org.slatwright.api.model.Part parts}, where each piece of them stands ({@link
 * org.slatwright.api.model.Piece}, {@link org.slatwright.api.model.Placement}), how they are joined
 * and what fastens them.
 *
 * <h2>Axes of the rack</h2>
 *
 * Looking at the front: x to the right, y away from the viewer, z up; right-handed. The origin is
 * the lowest, leftmost, foremost corner of the box around the whole rack, so no coordinate of a
 * part is negative.
 *
 * <h2>Axes of a part</h2>
 *
 * Every part is modelled lying in its own box with one corner at the origin: the first axis along
 * its length, the second along its width, the third along its thickness; right-handed. {@link
 * org.slatwright.api.model.Face} names the six sides of that box.
 */
package org.slatwright.api.model;
