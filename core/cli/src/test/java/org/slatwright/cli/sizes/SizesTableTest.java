package org.slatwright.cli.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Any table that a spreadsheet writes (RFC 4180, and its cousins) is read; any other is refused.
 */
class SizesTableTest {

  private static final SortedSet<String> KEYS =
      new TreeSet<>(List.of("title", "rack", "rack.upright", "rack.openings[]", "rack.foot"));

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void theSeparatorIsSeenFromTheFirstRow(String separator) throws Exception {
    String text = "name,rack.upright,rack.openings[0]\na,1400,380\n";
    assertEquals(
        List.of(row(2, "a", "rack.upright=1400", "rack.openings[0]=380")),
        rows(text.replace(",", separator)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void anyLineEndEndsARow(String end) throws Exception {
    String text = "name,rack.upright\na,1400\nb,1500";
    assertEquals(
        List.of(row(2, "a", "rack.upright=1400"), row(3, "b", "rack.upright=1500")),
        rows(text.replace("\n", end)));
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheFirstKey() throws Exception {
    assertEquals(List.of(row(2, "0001", "rack.foot=80")), rows("\uFEFFrack.foot\n80\n"));
  }

  /** Written by spreadsheets, and by RFC 4180 unknown. */
  @ParameterizedTest
  @ValueSource(strings = {"sep=;\n", "sep=;\r\n", "sep=;\r", "\uFEFFsep=;\n"})
  void aFirstLineMayNameTheSeparatorAndCountsAsALine(String line) throws Exception {
    assertEquals(
        List.of(row(3, "a", "title=x, y"), row(4, "b", "rack.foot=80")),
        rows(line + "name;title;rack.foot\na;x, y;\nb;;80\n"));
    TableException wrong = assertThrows(TableException.class, () -> rows(line + "rack.fot\n80"));
    assertEquals(2, wrong.line());
  }

  /** RFC 4180, section 2, rules 6 and 7. */
  @Test
  void aCellInQuotesMayHoldSeparatorsLineBreaksAndQuotes() throws Exception {
    assertEquals(
        List.of(row(2, "a", "title=two, or\nthree \"odd\" ones"), row(4, "b", "rack.foot=1 3/4\"")),
        rows("name,title,rack.foot\na,\"two, or\nthree \"\"odd\"\" ones\",\nb,,\"1 3/4\"\"\"\n"));
  }

  @Test
  void anInchMarkNeedsNoQuotesWhereNoneBegin() throws Exception {
    assertEquals(List.of(row(2, "0001", "rack.foot=1 3/4\"")), rows("rack.foot\n1 3/4\"\n"));
  }

  @Test
  void anEmptyCellSetsNothingAndAnEmptyRowIsNone() throws Exception {
    assertEquals(
        List.of(row(2, "0001", "rack.foot=80"), row(5, "0002", "rack.upright=1400")),
        rows("rack.upright,rack.foot,\n,80,\n\n ,,\n1400\n"));
  }

  @Test
  void aRowWithoutANameIsNumbered() throws Exception {
    assertEquals(
        List.of(row(2, "a", "rack.foot=80"), row(3, "0002", "rack.foot=90")),
        rows("name,rack.foot\na,80\n,90\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rack.uprigth|there is no key rack.uprigth; did you mean rack.upright?",
        "rack.opening[2]|there is no key rack.opening[2]; did you mean rack.openings[0]?",
        "rack.openings|there is no key rack.openings; did you mean rack.openings[0]?",
        "price list|there is no key price list; 'slatwright schema' prints all of them",
        "Name,rack.foot|there is no key Name; did you mean name?",
        "rack.foot,name|the column name must be the first",
        "rack.foot,rack.foot|the column rack.foot stands twice in the first row",
        "name,name,rack.foot|the column name stands twice in the first row",
        "name,,rack.foot|column 2 has no key in the first row",
        "name|the first row names no key of the rack file, such as rack.upright",
        "sep=x|there is no key sep=x; 'slatwright schema' prints all of them",
      })
  void aFirstRowThatIsWrongIsRefused(String header, String fault) {
    TableException wrong = assertThrows(TableException.class, () -> rows(header + "\n1,2\n"));
    assertEquals(1, wrong.line());
    assertEquals(List.of(fault), wrong.faults());
  }

  @Test
  void everyWrongKeyIsToldAtOnce() {
    TableException wrong = assertThrows(TableException.class, () -> rows("rack.fot,rack.uprigth"));
    assertEquals(2, wrong.faults().size());
  }

  @Test
  void anEmptyTableIsRefused() {
    assertTrue(
        assertThrows(TableException.class, () -> rows(""))
            .getMessage()
            .startsWith("the table is empty; "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "../x,80|'../x' is not a safe file name",
        "a/b,80|'a/b' is not a safe file name",
        ".x,80|'.x' is not a safe file name",
        "CON,80|'CON' is not a safe file name",
        "Taken,80|the name Taken was used before",
        "b,80,90|the row has 3 cells, the first row 2",
      })
  void aRowThatIsWrongDoesNotHideTheNext(String row, String fault) throws Exception {
    List<SizesRow> rows = rows("name,rack.foot\ntaken,80\n" + row + "\nlast,90\n");
    assertEquals(1, rows.get(1).faults().size());
    assertTrue(rows.get(1).faults().get(0).startsWith(fault + "; "), rows.toString());
    assertEquals(row(4, "last", "rack.foot=90"), rows.get(2));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"a\"b,80\n", "\"a,80\n", "\"a\" b,80"})
  void quotesThatGoWrongEndTheReadingAtTheirRow(String row) throws Exception {
    try (SizesTable table = open(bytes("name,rack.foot\nfirst,80\n" + row))) {
      assertEquals(Optional.of(row(2, "first", "rack.foot=80")), table.next());
      TableException wrong = assertThrows(TableException.class, table::next);
      assertEquals(3, wrong.line());
      assertTrue(wrong.getMessage().startsWith("quotes go wrong in this row; "));
    }
  }

  @Test
  void aQuoteThatIsNeverClosedDoesNotFillTheMemory() throws Exception {
    InputStream endless =
        new InputStream() {
          private long count;

          @Override
          public int read() {
            assertTrue(count++ < 3_000_000, "read on and on");
            return count < 12 ? "rack.foot\n\"".charAt((int) count - 1) : 'x';
          }
        };
    try (SizesTable table = open(endless)) {
      assertEquals(2, assertThrows(TableException.class, table::next).line());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"windows-1252", "UTF-16"})
  void anotherEncodingIsNamed(String encoding) {
    byte[] bytes = "name,title\na,Wäsche\n".getBytes(Charset.forName(encoding));
    TableException wrong =
        assertThrows(TableException.class, () -> rows(new ByteArrayInputStream(bytes)));
    assertEquals("the table is not in UTF-8; save it as \"CSV UTF-8\"", wrong.getMessage());
  }

  private static SizesRow row(long line, String folder, String... settings) {
    return new SizesRow(line, folder, List.of(settings), List.of());
  }

  private static List<SizesRow> rows(String text) throws TableException, IOException {
    return rows(bytes(text));
  }

  private static List<SizesRow> rows(InputStream in) throws TableException, IOException {
    List<SizesRow> rows = new ArrayList<>();
    try (SizesTable table = open(in)) {
      for (Optional<SizesRow> row = table.next(); row.isPresent(); row = table.next()) {
        rows.add(row.get());
      }
    }
    return rows;
  }

  private static SizesTable open(InputStream in) throws TableException, IOException {
    return SizesTable.open(in, KEYS);
  }

  private static InputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }
}
