/**
 * Outlines of flat pieces: made exactly ({@link org.slatwright.design.outline.Outlines}), followed
 * by a round cutter ({@link org.slatwright.design.outline.Offset}), and handed to JTS as polygons
 * where overlap and clearance are asked for ({@link org.slatwright.design.outline.Polygons}).
 */
package org.slatwright.design.outline;
