package org.slatwright.exporter.dxf;

import java.util.HexFormat;

/**
 * Any text as one ASCII line that a TEXT entity shows as it is. Characters outside ASCII become
 * {@code \}{@code U+nnnn}, as versions up to R2000 want it (DXF Reference, "String Group Codes");
 * those that need more than four digits become a question mark. What a TEXT entity takes for a code
 * ({@code ^J}, a backslash) is shown as it stands, but for {@code %%d}: no spelling of two percent
 * signs is read alike everywhere, so a space parts them.
 */
final class DxfText {

  /** The longest string that a reader must take. */
  private static final int LONGEST = 255;

  private DxfText() {}

  /** The line; text too long for one is cut. */
  static String escaped(String text) {
    StringBuilder line = new StringBuilder();
    for (int codePoint : text.replaceAll("%(?=%)", "% ").codePoints().toArray()) {
      String spelt = spelt(codePoint);
      if (line.length() + spelt.length() > LONGEST) {
        break;
      }
      line.append(spelt);
    }
    return line.toString();
  }

  private static String spelt(int codePoint) {
    if (Character.isISOControl(codePoint)) {
      return " ";
    }
    if (codePoint == '^') {
      return "^ ";
    }
    if (codePoint == '\\') {
      return hex(codePoint);
    }
    if (codePoint < 0x80) {
      return Character.toString(codePoint);
    }
    boolean fits = Character.isBmpCodePoint(codePoint) && !isSurrogate(codePoint);
    return fits ? hex(codePoint) : "?";
  }

  private static boolean isSurrogate(int codePoint) {
    return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
  }

  private static String hex(int codePoint) {
    return "\\U+" + HexFormat.of().withUpperCase().toHexDigits((char) codePoint);
  }
}
