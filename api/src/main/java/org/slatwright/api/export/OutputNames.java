package org.slatwright.api.export;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names of one run's files: each safe on every common file system, and used once. Names that
 * differ only in case are the same, since to some file systems they are.
 */
public final class OutputNames {

  private static final int LONGEST_PIECE = 100;
  private static final Pattern PIECE =
      Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9._-]*[A-Za-z0-9_-])?");
  // Microsoft, "Naming Files, Paths, and Namespaces": reserved with any ending.
  private static final Pattern DEVICE =
      Pattern.compile("(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\\..*)?");

  private final Set<String> files = new HashSet<>();
  private final Set<String> folders = new HashSet<>();

  /**
   * Takes a name as {@link Destination#file} describes it.
   *
   * @throws IllegalArgumentException when it is not safe, was taken before, or is a file where
   *     another name has a folder
   */
  public void claim(String name) {
    requireSafe(name);
    String folded = name.toLowerCase(Locale.ROOT);
    if (files.contains(folded) || folders.contains(folded)) {
      throw new IllegalArgumentException("the name " + name + " was used before");
    }
    for (int slash = folded.indexOf('/'); slash >= 0; slash = folded.indexOf('/', slash + 1)) {
      String folder = folded.substring(0, slash);
      if (files.contains(folder)) {
        throw new IllegalArgumentException(name + " needs a folder where a file is");
      }
      folders.add(folder);
    }
    files.add(folded);
  }

  private static void requireSafe(String name) {
    for (String piece : name.split("/", -1)) {
      boolean safe =
          piece.length() <= LONGEST_PIECE
              && PIECE.matcher(piece).matches()
              && !DEVICE.matcher(piece.toLowerCase(Locale.ROOT)).matches();
      if (!safe) {
        throw new IllegalArgumentException("'" + name + "' is not a safe file name");
      }
    }
  }
}
