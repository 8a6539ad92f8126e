package org.slatwright.api.export;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Where an exporter's files go. A file appears whole, once its content is written, or not at all.
 */
public interface Destination {

  /**
   * Writes one file.
   *
   * @param name a relative path with {@code /} between folders, each piece of it letters, digits,
   *     dots, hyphens and underscores, starting with a letter or digit, at most 100 long; used once
   *     (see {@link OutputNames})
   * @param content writes the bytes
   * @throws IllegalArgumentException when the name is not safe or was used before
   * @throws IOException when the file cannot be written; nothing is left of it
   */
  void file(String name, Content content) throws IOException;

  /** Writes the bytes of one file. */
  @FunctionalInterface
  interface Content {

    /**
     * Writes everything.
     *
     * @param out buffered; closed by the destination, and of no use after this returns
     */
    void writeTo(OutputStream out) throws IOException;
  }
}
