/**
 * Drawings spelt as SVG elements, for every format that holds SVG; no exporter itself.
 *
 * <p>{@link org.slatwright.exporter.figures.DrawingWriter} walks the figures of a {@link
 * org.slatwright.exporter.figures.Drawing}. What it finds is spelt by {@link
 * org.slatwright.exporter.figures.SvgDocument} (elements and shapes, through Apache Batik) and by
 * one of the two kinds of {@link org.slatwright.exporter.figures.SheetLettering}. {@code PaperFlip}
 * alone knows that the paper's y runs up and SVG's down.
 *
 * <p>The elements, to which {@link org.slatwright.exporter.figures.SvgStyle} gives their looks:
 *
 * <pre>
 * svg role="img" aria-labelledby="title desc"
 *   title, desc
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
package org.slatwright.exporter.figures;
