/**
 * The cut list, the buying list, the cutting plan, the hole list, quantities, what fits and the
 * findings as CSV tables.
 *
 * <p>{@link org.slatwright.exporter.csv.CsvExporter} writes each {@link
 * org.slatwright.exporter.csv.Table} of {@link org.slatwright.exporter.csv.PlanTables}; {@link
 * org.slatwright.exporter.csv.CsvWriter} alone knows how a table is spelt.
 */
package org.slatwright.exporter.csv;
