package org.slatwright.cli.sizes;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What stands between the cells of a table.
 *
 * @param lines before the first row: one that names it, as spreadsheets write it, or none
 */
record Separator(char character, int lines) {

  private static final int LONGEST_HEADER = 1 << 16;

  private static final Pattern NAMED = Pattern.compile("sep=([,;\\t])(\\r\\n?|\\n|$)");

  /**
   * The character that the first line names, {@code sep=;}, or shows: a comma, or the semicolon or
   * tab that spreadsheets write where the comma is for decimals. No key has any of them in it. The
   * reader goes to the first row.
   */
  static Separator of(BufferedReader table) throws IOException {
    table.mark(LONGEST_HEADER);
    char[] start = new char[LONGEST_HEADER];
    int length = Math.max(table.read(start), 0);
    table.reset();
    String text = new String(start, 0, length);
    Matcher named = NAMED.matcher(text);
    if (named.lookingAt()) {
      table.skip(named.end());
      return new Separator(named.group(1).charAt(0), 1);
    }
    String line = text.lines().findFirst().orElse("");
    char shown = Stream.of(';', '\t').filter(one -> line.indexOf(one) >= 0).findFirst().orElse(',');
    return new Separator(shown, 0);
  }
}
