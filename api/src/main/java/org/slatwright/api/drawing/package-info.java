/**
 * Finished drawings in neutral primitives: an exporter spells them and places nothing.
 *
 * <p>Everything on a {@link org.slatwright.api.drawing.Sheet} is in millimetres on the paper, x to
 * the right and y up from the lower left corner. Positions on paper are {@code double}s, since
 * nobody cuts by them; every number that is read is text, made from an exact length.
 */
package org.slatwright.api.drawing;
