package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.design.rackfile.RackFile;

/** The keys that are read and checked but that nothing is reckoned from yet, all in one place. */
final class NotUsedYet {

  private static final String READ_ONLY = "read, but nothing is reckoned from it yet";
  private static final String LONGEST_ONLY =
      "serves only to check the longest part; prices and numbers on hand are not reckoned with yet";

  private static final List<Key> KEYS =
      List.of(
          new Key("timber.frame.lengths", LONGEST_ONLY),
          new Key("timber.slats.lengths", LONGEST_ONLY),
          new Key(
              "shop.kerf",
              "serves only to count the slats that timber.slats.boards give; no plan of cuts yet"),
          new Key(
              "shop.cutter",
              "serves only to choose the cautions; its kerf or tool is not reckoned with yet"));

  private NotUsedYet() {}

  /** One note a key that the file gives. */
  static void tell(Worksheet sheet) {
    KEYS.stream()
        .filter(key -> key.isGiven(sheet.file()))
        .forEach(key -> sheet.note(key.path, key.use, ""));
  }

  private record Key(String path, String use) {

    boolean isGiven(RackFile file) {
      return file.keys().keySet().stream()
          .anyMatch(given -> given.equals(path) || given.startsWith(path + "."));
    }
  }
}
