package org.slatwright.cli.sizes;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.stream.Stream;

/** What stands between the cells of a table. */
final class Separator {

  private static final int LONGEST_HEADER = 1 << 16;

  private Separator() {}

  /**
   * The character that the first line shows: a comma, or the semicolon or tab that spreadsheets
   * write where the comma is for decimals. No key has any of them in it. The reader stays where it
   * is.
   */
  static char of(BufferedReader table) throws IOException {
    table.mark(LONGEST_HEADER);
    char[] start = new char[LONGEST_HEADER];
    int length = Math.max(table.read(start), 0);
    table.reset();
    String line = new String(start, 0, length).lines().findFirst().orElse("");
    return Stream.of(';', '\t').filter(one -> line.indexOf(one) >= 0).findFirst().orElse(',');
  }
}
