package org.slatwright.exporter.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Spells a table as RFC 4180: commas, CRLF, quotes where a cell needs them; in UTF-8.
 *
 * <p>A byte order mark comes first: without one a spreadsheet opened by a double click takes the
 * file for its old 8-bit code page and shows {@code 44 × 70} as rubbish.
 *
 * <p>Text that a spreadsheet would run as a formula gets an apostrophe in front, since it may come
 * from a rack file of someone else's (OWASP, "CSV Injection"; ASVS 5.0, 1.2.10). Numbers stay as
 * they are.
 */
final class CsvWriter {

  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final String FORMULA_STARTS = "=+-@\t\r\0";

  private CsvWriter() {}

  /** Writes {@code table}; {@code out} stays open. */
  static void write(Table table, OutputStream out) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    text.write(BYTE_ORDER_MARK);
    // Not closed: the stream belongs to the caller.
    CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180);
    printer.printRecord(table.header());
    for (List<Cell> row : table.rows()) {
      printer.printRecord(row.stream().map(CsvWriter::spelt));
    }
    printer.flush();
  }

  private static String spelt(Cell cell) {
    String content = cell.content();
    boolean formula =
        cell instanceof Cell.Text
            && !content.isEmpty()
            && FORMULA_STARTS.indexOf(content.charAt(0)) >= 0;
    return formula ? "'" + content : content;
  }
}
