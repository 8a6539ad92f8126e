/**
 * Turns a solved rack into parts in their places.
 *
 * <p>{@link org.slatwright.design.framing.Framing} is the way in. {@code Grid} knows where
 * everything stands, {@code PartSet} what each part is, {@code FrameBuilder} and {@code
 * ShelfBuilder} put the pieces there.
 */
package org.slatwright.design.framing;
