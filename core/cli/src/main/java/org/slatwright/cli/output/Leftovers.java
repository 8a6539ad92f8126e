package org.slatwright.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Files that lie where a plan's files lie, but were not written with them: perhaps of an older
 * plan, perhaps the maker's own, so that they are named and never deleted.
 */
final class Leftovers {

  private static final List<String> FOLDERS = List.of("drawings", "jig", "parts", "templates");

  private static final List<String> FILES =
      List.of(
          "buying-list.csv",
          "cut-list.csv",
          "cutting-plan.csv",
          "findings.csv",
          "hole-list.csv",
          "missing-pieces.csv",
          "order-of-work.csv",
          "plan-book.html",
          "plan-book.pdf",
          "plan.json",
          "plan.schema.json",
          "quantities.csv",
          "shelf-slats.csv",
          "spare-pieces.csv",
          "stop-settings.csv",
          "templates.pdf",
          "what-fits.csv");

  private Leftovers() {}

  /** Those of the plan in {@code folder}, folder by folder and name by name. */
  static List<Path> of(Path folder, Set<Path> written) {
    List<Path> there = new ArrayList<>();
    FOLDERS.forEach(name -> there.addAll(files(folder.resolve(name))));
    FILES.stream().map(folder::resolve).filter(Leftovers::isFile).forEach(there::add);
    there.removeAll(written);
    return there;
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(Leftovers::isFile)
          .filter(file -> !file.getFileName().toString().startsWith("."))
          .sorted()
          .toList();
    } catch (IOException e) {
      // The plan itself is written; that a folder cannot be looked into takes nothing from it.
      return List.of();
    }
  }

  private static boolean isFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }
}
