/**
 * Closes the dimension chains: a {@link org.slatwright.design.rackfile.RackFile} in, a {@link
 * org.slatwright.design.sizing.Rack} in which nothing is unknown out.
 *
 * <p>Start with {@link org.slatwright.design.sizing.Sizing}. One class a chain reads the file,
 * complains and prints ({@code HeightChain}, {@code SlatRowChain}, {@code WidthChain}, {@code
 * DowelChain}); the arithmetic of the first two stands by itself ({@code HeightSizes}, {@code
 * RowSizes}), so that each change that {@code HeightChanges} and {@code RowChanges} propose is
 * tried before it is named.
 */
package org.slatwright.design.sizing;
