package org.slatwright.cli.output;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Folders made on the way to a file, so that they can be taken back when the file is not written.
 */
final class Folders {

  private final List<Path> made = new ArrayList<>();

  /** Makes the folder and those around it, where they are not there. */
  void make(Path folder) throws IOException {
    Path absolute = folder.toAbsolutePath().normalize();
    if (Files.isDirectory(absolute)) {
      return;
    }
    if (Files.exists(absolute, LinkOption.NOFOLLOW_LINKS)) {
      throw new OutputException("cannot write to " + folder + ": it is not a folder");
    }
    make(absolute.getParent());
    try {
      Files.createDirectory(absolute);
      made.add(absolute);
    } catch (FileAlreadyExistsException e) {
      // Made by someone else since; what matters is that it is there.
      if (!Files.isDirectory(absolute)) {
        throw e;
      }
    }
  }

  /** Keeps what was made. */
  void keep() {
    made.clear();
  }

  /** Removes what was made, as far as it is empty. */
  void takeBack() {
    Collections.reverse(made);
    for (Path folder : made) {
      try {
        Files.deleteIfExists(folder);
      } catch (IOException e) {
        return;
      }
    }
  }
}
