package com.example.partslist;

/** Spells text so that Markdown shows it as it is. */
final class Markdown {

  private Markdown() {}

  /**
   * One line in which nothing is markup. CommonMark (section 2.4) lets a backslash stand before any
   * ASCII punctuation; line ends would end a heading or a table row, so they become blanks.
   */
  static String escaped(String text) {
    return text.replaceAll("[\\r\\n\\t]+", " ")
        .replaceAll("[\\\\`*_{}\\[\\]<>()#+!|&~-]", "\\\\$0");
  }
}
