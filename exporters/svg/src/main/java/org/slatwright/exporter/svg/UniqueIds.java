package org.slatwright.exporter.svg;

import java.util.HashSet;
import java.util.Set;

/** Ids that are valid in XML, safe in a link or a selector, and different from one another. */
final class UniqueIds {

  private final Set<String> taken = new HashSet<>();

  /** The id nearest to {@code wish}: {@code U-1}, {@code U-1-2} when that is taken. */
  String like(String wish) {
    String stem = valid(wish);
    String id = stem;
    for (int count = 2; !taken.add(id); count++) {
      id = stem + "-" + count;
    }
    return id;
  }

  private static String valid(String wish) {
    String plain = wish.replaceAll("[^A-Za-z0-9_-]+", "-");
    return plain.matches("[A-Za-z_].*") ? plain : "_" + plain;
  }
}
