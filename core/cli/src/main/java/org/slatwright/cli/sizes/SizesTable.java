package org.slatwright.cli.sizes;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.slatwright.api.export.OutputNames;

/**
 * A table of sizes, read row by row: one plan a row. Its first row names a key of the rack file
 * above each column; a cell that is empty leaves the key as it is. A first column {@code name}
 * names the folder of each plan.
 *
 * <p>RFC 4180 in UTF-8, with or without a byte order mark, with any line ends; or with semicolons
 * or tabs for commas, as spreadsheets write it, and with a first line {@code sep=;} that says so.
 * One row at a time is in memory, besides the names.
 */
public final class SizesTable implements AutoCloseable {

  private static final int BYTE_ORDER_MARK = 0xFEFF;

  private final CSVParser parser;
  private final RowLimit limit;
  private final Iterator<CSVRecord> records;
  private final Header header;
  private final OutputNames names = new OutputNames();
  private final int linesBefore;
  private int rows;

  private SizesTable(BufferedReader text, SortedSet<String> known)
      throws TableException, IOException {
    Separator separator = Separator.of(text);
    this.linesBefore = separator.lines();
    this.limit = new RowLimit(text);
    this.parser =
        CSVParser.builder()
            .setReader(limit)
            .setFormat(
                CSVFormat.RFC4180
                    .builder()
                    .setDelimiter(separator.character())
                    .setIgnoreEmptyLines(false)
                    .get())
            .get();
    this.records = parser.iterator();
    Optional<CSVRecord> first = record(1 + linesBefore);
    if (first.isEmpty()) {
      throw new TableException(
          1 + linesBefore,
          "the table is empty; its first row names keys of the rack file, such as rack.upright");
    }
    this.header = Header.of(first.get().toList(), 1 + linesBefore, known);
  }

  /**
   * Begins to read a table.
   *
   * @param in closed with the table
   * @param known every key that a column may set, entries of lists as {@code []}
   * @throws TableException when its first row is wrong
   * @throws IOException when it cannot be read
   */
  public static SizesTable open(InputStream in, SortedSet<String> known)
      throws TableException, IOException {
    try {
      BufferedReader text =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
      skipByteOrderMark(text);
      return new SizesTable(text, known);
    } catch (CharacterCodingException e) {
      throw notUtf8();
    }
  }

  /** The keys that its columns set, in their order. */
  public List<String> keys() {
    return header.keys();
  }

  /**
   * The next row that says something, or empty at the end.
   *
   * @throws TableException when the table cannot be read further
   * @throws IOException when the file cannot
   */
  public Optional<SizesRow> next() throws TableException, IOException {
    try {
      return nextFilled();
    } catch (CharacterCodingException e) {
      throw notUtf8();
    }
  }

  private Optional<SizesRow> nextFilled() throws TableException, IOException {
    while (true) {
      long line = linesBefore + parser.getCurrentLineNumber() + 1;
      Optional<CSVRecord> record = record(line);
      if (record.isEmpty()) {
        return Optional.empty();
      }
      List<String> cells = record.get().stream().map(String::strip).toList();
      if (!cells.stream().allMatch(String::isEmpty)) {
        return Optional.of(row(line, cells));
      }
    }
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }

  private SizesRow row(long line, List<String> cells) {
    rows++;
    List<String> faults = new ArrayList<>();
    long filled = cells.stream().skip(header.width()).filter(cell -> !cell.isEmpty()).count();
    if (filled > 0) {
      faults.add(
          "the row has "
              + cells.size()
              + " cells, the first row "
              + header.width()
              + "; a comma within a cell needs quotes around it");
    }
    String folder = folder(cells.get(0), faults);
    return new SizesRow(line, folder, settings(cells), faults);
  }

  private List<String> settings(List<String> cells) {
    List<String> settings = new ArrayList<>();
    int first = header.named() ? 1 : 0;
    for (int i = 0; i < header.keys().size() && first + i < cells.size(); i++) {
      String cell = cells.get(first + i);
      if (!cell.isEmpty()) {
        settings.add(header.keys().get(i) + "=" + cell);
      }
    }
    return settings;
  }

  /** By its name, or else its number, so wide that a thousand of them are sorted as they are. */
  private String folder(String firstCell, List<String> faults) {
    String number = String.format(Locale.ROOT, "%04d", rows);
    String folder = header.named() && !firstCell.isEmpty() ? firstCell : number;
    try {
      if (folder.indexOf('/') >= 0) {
        throw new IllegalArgumentException("'" + folder + "' is not a safe file name");
      }
      names.claim(folder);
    } catch (IllegalArgumentException e) {
      faults.add(
          e.getMessage() + "; name each row with letters, digits, dots and hyphens of its own");
    }
    return folder;
  }

  private Optional<CSVRecord> record(long line) throws TableException, IOException {
    limit.nextRow();
    try {
      return records.hasNext() ? Optional.of(records.next()) : Optional.empty();
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CSVException || e.getCause() instanceof RowLimit.EndlessRow) {
        throw new TableException(
            line,
            "quotes go wrong in this row; a cell that begins with a quote ends with one, and a quote"
                + " within it is written twice");
      }
      throw e.getCause();
    }
  }

  /** Text is read ahead of the rows, so that the line is not known. */
  private static TableException notUtf8() {
    return new TableException(0, "the table is not in UTF-8; save it as \"CSV UTF-8\"");
  }

  private static void skipByteOrderMark(BufferedReader text) throws IOException {
    text.mark(1);
    if (text.read() != BYTE_ORDER_MARK) {
      text.reset();
    }
  }
}
