package org.slatwright.exporter.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvWriterTest {

  /** RFC 4180, section 2: rule 1 (CRLF), 3 (header), 6 (quotes around), 7 (quotes doubled). */
  @Test
  void rowsEndWithCrLfAndCellsAreQuotedWhereTheyMustBe() throws IOException {
    assertEquals(
        "\uFEFFa,b\r\n\"one, two\",\"3/8\"\" × 1\"\r\n\"two\nlines\",\r\n",
        written(
            List.of(
                List.of(text("one, two"), text("3/8\" × 1")),
                List.of(text("two\nlines"), text("")))));
  }

  @Test
  void aNumberIsNeverTakenForAFormula() throws IOException {
    assertEquals(
        "\uFEFFa,b\r\n-7.5,'-7.5\r\n",
        written(List.of(List.of(new Cell.Number("-7.5"), text("-7.5")))));
  }

  /** OWASP ASVS 5.0, 1.2.10, names the null character among those that start a formula. */
  @Test
  void aNullCharacterInFrontIsDefused() throws IOException {
    assertEquals("\uFEFFa,b\r\n'\0=1,\r\n", written(List.of(List.of(text("\0=1"), text("")))));
  }

  @Test
  void anEmptyTableIsItsHeader() throws IOException {
    assertEquals("\uFEFFa,b\r\n", written(List.of()));
  }

  @Test
  void aRowThatDoesNotFitIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> written(List.of(List.of(text("alone")))));
  }

  private static Cell text(String content) {
    return new Cell.Text(content);
  }

  private static String written(List<List<Cell>> rows) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    CsvWriter.write(new Table("t", List.of("a", "b"), rows), bytes);
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
