/**
 * The whole plan as one page: {@code plan-book.html}, which asks the network for nothing.
 *
 * <p>{@link org.slatwright.exporter.html.HtmlExporter} has {@code PlanPage} put together sections,
 * a class each, of {@code Node}s, which {@code HtmlWriter} alone spells. Looks and behaviour lie in
 * resource files beside this package; {@code PageAssets} joins them.
 *
 * <p>Every length is carried exactly and spelt in both units ({@code Measures}):
 *
 * <pre>
 * data value="1500"                      millimetres, every digit
 *   span.in-mm  1500 mm                  shown while html[data-unit=mm]
 *   span.in-in  59.0551"                 shown while html[data-unit=in]
 * </pre>
 *
 * <p>Drawings keep the maker's unit, and the page says so: their title blocks, tables and notes
 * name it, and a dimension line has no room for the other spelling.
 */
package org.slatwright.exporter.html;
