/**
 * Draws sheets to paper scale in the neutral primitives of {@code org.slatwright.api.drawing}.
 *
 * <p>{@link org.slatwright.design.drafting.Drafting} lists the sheets. {@code CoverSheet}, {@code
 * GeneralArrangement}, {@code FrameSheet}, {@code ShelfLayout}, {@code PartsSheet} and {@code
 * JigSheet} each lay one out; {@code Projection} and {@code VisibleLines} turn solids into lines;
 * {@code Pictorial} draws the rack as one sees it, from {@code IsometricLines} and {@code
 * IsometricFaces}; {@code DimensionChain}, {@code TitleBlock}, {@code Table} and {@code Paragraph}
 * draw what every sheet has. Sizes, line widths and lettering follow ISO 5457, ISO 7200, ISO 128-2,
 * ISO 3098 and ISO 129-1; scales ISO 5455; the pictorial view ISO 5456-3.
 */
package org.slatwright.design.drafting;
