package org.slatwright.exporter.figures;

import java.util.HashSet;
import java.util.Set;

/** Ids that are valid in XML, safe in a link or a selector, and different from one another. */
public final class UniqueIds {

  private final Set<String> taken = new HashSet<>();
  private final String prefix;

  /** Of a document of its own. */
  public UniqueIds() {
    this("");
  }

  /**
   * Of a part of a document, whose other ids do not begin so.
   *
   * @param prefix that every id begins with: letters and hyphens, or empty
   */
  public UniqueIds(String prefix) {
    this.prefix = prefix;
  }

  /** The id nearest to {@code wish}: {@code U-1}, {@code U-1-2} when that is taken. */
  public String like(String wish) {
    String stem = valid(prefix + wish);
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
