/**
 * Drawing sheets as PNG, one picture a sheet, to publish a plan: in greys, with the size on paper
 * noted in the file.
 *
 * <p>{@link org.slatwright.exporter.png.PngExporter} opens the font and has a {@link
 * org.slatwright.exporter.png.Picture} made of every sheet, on which {@link
 * org.slatwright.exporter.png.FigurePainter} draws with the JDK's own graphics, without its fonts:
 * lettering is filled as the {@link org.slatwright.exporter.png.GlyphOutlines} of the font that
 * comes with the api, so that neither a display nor a font of the machine is needed. {@link
 * org.slatwright.exporter.png.PngWriter} spells the picture.
 *
 * <p>The same plan gives the same bytes, save that one build of zlib may pack them otherwise than
 * another, and another version of Java may smooth an edge otherwise.
 */
package org.slatwright.exporter.png;
