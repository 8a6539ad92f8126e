/**
 * The plan as PDF, true to size: all sheets and template pages as one book, and the template pages
 * once more alone, to be printed at 100 %.
 *
 * <p>{@link org.slatwright.exporter.pdf.PdfExporter} says what is in each {@link
 * org.slatwright.exporter.pdf.Book}, which has {@link org.slatwright.exporter.pdf.PageWriter} draw
 * every page with Apache PDFBox. {@link org.slatwright.exporter.pdf.PageFrame} alone turns
 * millimetres into points, and makes a template page larger by the {@link
 * org.slatwright.exporter.pdf.Stretch} that a printer takes from it.
 *
 * <p>A document holds no date, and its id comes from its title: the same plan gives the same bytes,
 * save that one build of zlib may pack them otherwise than another.
 */
package org.slatwright.exporter.pdf;
