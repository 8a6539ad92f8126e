package org.slatwright.exporter.figures;

/** Text as XML 1.0 can hold it (its production 2, Char). */
public final class XmlText {

  private static final int REPLACEMENT = 0xFFFD;

  private XmlText() {}

  /** The same text, with U+FFFD for every character that XML has no way to say. */
  public static String legal(String text) {
    return text.codePoints()
        .map(codePoint -> isLegal(codePoint) ? codePoint : REPLACEMENT)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static boolean isLegal(int codePoint) {
    return codePoint == '\t'
        || codePoint == '\n'
        || codePoint == '\r'
        || codePoint >= 0x20 && codePoint <= 0xD7FF
        || codePoint >= 0xE000 && codePoint <= 0xFFFD
        || codePoint >= 0x10000;
  }
}
