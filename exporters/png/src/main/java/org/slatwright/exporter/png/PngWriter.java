package org.slatwright.exporter.png;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/**
 * Spells a picture as a PNG file of 16 greys (ISO/IEC 15948:2004, "PNG" below):
 *
 * <pre>
 * signature
 * IHDR  width, height, 4 bits, grey, deflate, filters, no interlace
 * pHYs  dots a metre, both ways
 * iTXt  Title
 * IDAT  every row, after the number of its filter
 * IEND
 * </pre>
 *
 * <p>So many greys are enough for smooth edges, and make the file half as long as 256 would. The
 * JDK's own writer would look for every picture format on the machine first.
 */
final class PngWriter {

  /** PNG, 5.2. */
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  private static final int BITS = 4;
  private static final int LIGHTEST = (1 << BITS) - 1;
  private static final int WHITE = 0xff;
  private static final int GREY = 0;
  private static final int DEFLATE = 0;
  private static final int ADAPTIVE_FILTERS = 0;
  private static final int NO_INTERLACE = 0;
  private static final int UNIT_METRE = 1;

  /** PNG, 9.2: grey by grey, as it is. The filters for photographs make a drawing longer. */
  private static final int NO_FILTER = 0;

  private static final double MM_PER_METRE = 1000;

  private final DataOutputStream out;

  PngWriter(OutputStream out) {
    this.out = new DataOutputStream(out);
  }

  /** The whole file. */
  void write(Picture picture, String title) throws IOException {
    out.write(SIGNATURE);
    addChunk("IHDR", body -> header(picture, body));
    addChunk("pHYs", body -> size(picture, body));
    addChunk("iTXt", body -> title(title, body));
    addChunk("IDAT", body -> rows(picture, body));
    addChunk("IEND", body -> {});
    out.flush();
  }

  private static void header(Picture picture, DataOutputStream body) throws IOException {
    body.writeInt(picture.width());
    body.writeInt(picture.height());
    body.write(new byte[] {BITS, GREY, DEFLATE, ADAPTIVE_FILTERS, NO_INTERLACE});
  }

  private static void size(Picture picture, DataOutputStream body) throws IOException {
    int dotsPerMetre = (int) Math.round(picture.dotsPerMm() * MM_PER_METRE);
    body.writeInt(dotsPerMetre);
    body.writeInt(dotsPerMetre);
    body.writeByte(UNIT_METRE);
  }

  /** PNG, 11.3.4.5: keyword, not compressed, no language, keyword not translated, text. */
  private static void title(String title, DataOutputStream body) throws IOException {
    body.write("Title\0\0\0\0\0".getBytes(StandardCharsets.US_ASCII));
    body.write(title.replace('\0', ' ').getBytes(StandardCharsets.UTF_8));
  }

  private static void rows(Picture picture, DataOutputStream body) throws IOException {
    try (DeflaterOutputStream packed = new DeflaterOutputStream(body)) {
      for (int row = 0; row < picture.height(); row++) {
        packed.write(NO_FILTER);
        packed.write(row(picture, row));
      }
    }
  }

  /** Two dots a byte, the left one in its upper half. */
  private static byte[] row(Picture picture, int row) {
    byte[] greys = picture.greys();
    byte[] bytes = new byte[(picture.width() + 1) / 2];
    int start = row * picture.width();
    for (int x = 0; x < picture.width(); x++) {
      int grey = ((greys[start + x] & WHITE) * LIGHTEST + WHITE / 2) / WHITE;
      bytes[x / 2] |= (byte) (x % 2 == 0 ? grey << BITS : grey);
    }
    return bytes;
  }

  /** What a chunk holds. */
  @FunctionalInterface
  private interface Body {
    void writeTo(DataOutputStream body) throws IOException;
  }

  /** PNG, 5.3: length, type, body, and a check of the last two. */
  private void addChunk(String type, Body body) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write(type.getBytes(StandardCharsets.US_ASCII));
    body.writeTo(new DataOutputStream(bytes));
    byte[] chunk = bytes.toByteArray();
    CRC32 check = new CRC32();
    check.update(chunk);
    out.writeInt(chunk.length - type.length());
    out.write(chunk);
    out.writeInt((int) check.getValue());
  }
}
