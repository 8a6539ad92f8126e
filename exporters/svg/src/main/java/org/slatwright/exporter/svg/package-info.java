/**
 * Drawing sheets and templates as SVG, one file a sheet, a page or a whole template, true to size:
 * {@code width="297mm" viewBox="0 0 297 …"}, so that one user unit is one millimetre.
 *
 * <p>{@link org.slatwright.exporter.svg.SvgExporter} opens the font and hands every drawing to
 * {@code SheetWriter}. The elements are those of {@code org.slatwright.exporter.figures}, a {@code
 * style} after {@code desc}.
 */
package org.slatwright.exporter.svg;
