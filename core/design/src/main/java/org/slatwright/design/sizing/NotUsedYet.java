package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.design.rackfile.RackFile;

/** The keys that are read and checked but that nothing is reckoned from yet, all in one place. */
final class NotUsedYet {

  private static final List<Key> KEYS =
      List.of(
          new Key(
              "shop.cutter",
              "serves only to choose the cautions; its kerf or tool is not reckoned with yet"),
          new Key("shop.sheet-size", "is not reckoned with yet"));

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
