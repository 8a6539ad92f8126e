/**
 * Drawing sheets and templates as SVG, one file a sheet, a page or a whole template, true to size:
 * {@code width="297mm" viewBox="0 0 297 …"}, so that one user unit is one millimetre.
 *
 * <p>{@link org.slatwright.exporter.svg.SvgExporter} opens the font and hands every {@code Drawing}
 * to {@link org.slatwright.exporter.svg.SheetWriter}, which walks the figures. What it finds is
 * spelt by {@link org.slatwright.exporter.svg.SvgDocument} (elements and shapes, through Apache
 * Batik) and by one of the two kinds of {@link org.slatwright.exporter.svg.SheetLettering}. {@link
 * org.slatwright.exporter.svg.PaperFlip} alone knows that the paper's y runs up and SVG's down.
 *
 * <p>The output:
 *
 * <pre>
 * svg role="img" aria-labelledby="title desc"
 *   title, desc, style
 *   rect.fill-paper                                  the paper
 *   g#VIEW.view [data-scale="1:10"]                  one a view
 *     title
 *     line | path | circle  .line-KIND               lines, KIND as in LineKind
 *     path.fill-SHADE                                filled polygons
 *     text.lettering, or path.lettering aria-label   lettering
 *     g.dimension data-mm="1500"                     the exact length, and how it is drawn
 *     g#CLUSTER.cluster                              title, then figures
 * </pre>
 */
package org.slatwright.exporter.svg;
