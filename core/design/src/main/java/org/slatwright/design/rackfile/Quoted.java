package org.slatwright.design.rackfile;

/** Shows a maker's own words within a message: on one line, not too long, nothing invisible. */
final class Quoted {

  private static final int LONGEST = 40;

  private Quoted() {}

  /** {@code "14x"}. */
  static String of(String text) {
    return "\"" + clipped(text) + "\"";
  }

  private static String clipped(String text) {
    int[] points = text.strip().codePoints().limit(LONGEST + 1L).toArray();
    StringBuilder shown = new StringBuilder();
    for (int i = 0; i < Math.min(points.length, LONGEST); i++) {
      shown.appendCodePoint(visible(points[i]));
    }
    return points.length > LONGEST ? shown + "…" : shown.toString();
  }

  private static int visible(int point) {
    if (Character.isWhitespace(point)) {
      return ' ';
    }
    return switch (Character.getType(point)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED -> '?';
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
      default -> point;
    };
  }
}
