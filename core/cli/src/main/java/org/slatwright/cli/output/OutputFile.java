package org.slatwright.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** One file under a name of the maker's own choice. */
public final class OutputFile {

  private static final String STAGING_PREFIX = ".slatwright-";

  private OutputFile() {}

  /**
   * Writes the file, whole or not at all.
   *
   * @param replace whether a file that exists is replaced
   * @throws OutputException when it exists and may not be replaced, or cannot be written
   */
  public static void write(Path file, byte[] bytes, boolean replace) throws OutputException {
    if (Files.isDirectory(file)) {
      throw new OutputException("cannot write " + file + ": it is a folder");
    }
    if (!replace && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new OutputException(file + " exists (--replace writes over it)");
    }
    try {
      Path staging = Files.createTempDirectory(file.toAbsolutePath().getParent(), STAGING_PREFIX);
      Path part = staging.resolve("0");
      try {
        Files.write(part, bytes);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(part);
        Files.deleteIfExists(staging);
      }
    } catch (IOException e) {
      throw OutputException.cannotWrite(file, e);
    }
  }
}
