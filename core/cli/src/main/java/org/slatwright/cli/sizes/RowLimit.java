package org.slatwright.cli.sizes;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Refuses to read a row without end, which a quote that is never closed makes of the rest of a
 * table: it would be kept in memory whole.
 */
final class RowLimit extends FilterReader {

  private static final int MOST_CHARACTERS = 1 << 20;

  private int left = MOST_CHARACTERS;

  RowLimit(Reader in) {
    super(in);
  }

  /** Begins to count anew. */
  void nextRow() {
    left = MOST_CHARACTERS;
  }

  @Override
  public int read() throws IOException {
    return counted(super.read(), 1);
  }

  @Override
  public int read(char[] buffer, int from, int length) throws IOException {
    int read = super.read(buffer, from, length);
    return counted(read, Math.max(read, 0));
  }

  private int counted(int result, int characters) throws IOException {
    left -= characters;
    if (left < 0) {
      throw new EndlessRow();
    }
    return result;
  }

  /** A row longer than any could be. */
  static final class EndlessRow extends IOException {

    private static final long serialVersionUID = 1L;
  }
}
