/**
 * Closes the dimension chains: a {@link org.slatwright.design.rackfile.RackFile} in, a {@link
 * org.slatwright.design.sizing.Rack} in which nothing is unknown out.
 *
 * <p>Start with {@link org.slatwright.design.sizing.Sizing}. One class a chain reads the file,
 * complains and prints ({@code HeightChain}, {@code SlatRowChain}, {@code WidthChain}, {@code
 * DowelChain}); the arithmetic of the first two stands by itself ({@code HeightSizes}, {@code
 * RowSizes}), so that each change that {@code HeightChanges} and {@code RowChanges} propose is
 * tried before it is named, and {@code Trials} keeps those that suit the whole rack.
 *
 * <p>What the rack must hold comes first, as {@code Things}: the chains take from it the sizes that
 * the file leaves out; {@code Room} tells in the end what fits and what does not.
 */
package org.slatwright.design.sizing;
