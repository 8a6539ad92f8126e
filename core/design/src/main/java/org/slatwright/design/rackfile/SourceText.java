package org.slatwright.design.rackfile;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Turns the bytes of a file into text: UTF-8, with or without a byte order mark, within limits. */
final class SourceText {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private SourceText() {}

  static String decode(byte[] bytes, String source, Complaints complaints)
      throws RackFileException {
    Place whole = new Place(source, 0, 0);
    if (bytes.length > RackFileReader.MOST_BYTES) {
      throw complaints.fatal(whole, "is larger than 1 MiB; a rack file takes a few KiB");
    }
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
      throw complaints.fatal(whole, "is UTF-16 text; save it as UTF-8");
    }
    String text = decodeUtf8(bytes, source, complaints);
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    rejectInvisible(plain, source, complaints);
    return plain;
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }

  private static String decodeUtf8(byte[] bytes, String source, Complaints complaints)
      throws RackFileException {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      String message = "byte 0x%02X is not UTF-8 text; save the file as UTF-8";
      int wrong = bytes[in.position()] & 0xFF;
      throw complaints.fatal(endOf(text, source), message.formatted(wrong));
    }
    return text;
  }

  private static void rejectInvisible(String text, String source, Complaints complaints)
      throws RackFileException {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int point = text.codePointAt(i);
      if (!StreamReader.isPrintable(point) || point == BYTE_ORDER_MARK) {
        String message = "the invisible character U+%04X may not stand here; delete it";
        throw complaints.fatal(endOf(text.substring(0, i), source), message.formatted(point));
      }
    }
  }

  /** The place just after {@code text}. */
  private static Place endOf(String text, String source) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      char c = text.charAt(i);
      boolean crlf = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      boolean ends = c == '\n' || (c == '\r' && !crlf);
      line += ends ? 1 : 0;
      column = ends ? 1 : column + (c == BYTE_ORDER_MARK ? 0 : 1);
    }
    return new Place(source, line, column);
  }
}
