package org.slatwright.exporter.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Point2;

/**
 * Spells tags: a group code on one line, its value on the next. The file is ASCII, numbers have a
 * decimal point and no exponent, zero has no sign, on every machine.
 */
final class DxfTagWriter {

  /** Finer than a nanometre in either unit, and more than enough for the tangent of an angle. */
  private static final int DECIMALS = 12;

  private final Writer out;
  private final Unit unit;

  /**
   * Writes to {@code out}, which stays open.
   *
   * @param unit of every length
   */
  DxfTagWriter(OutputStream out, Unit unit) {
    this.out = new OutputStreamWriter(out, StandardCharsets.US_ASCII);
    this.unit = unit;
  }

  /** A name or keyword: ASCII, without line ends. */
  void word(int code, String value) throws IOException {
    out.write(code + "\n" + value + "\n");
  }

  /** Lettering or a comment: any text at all. */
  void text(int code, String value) throws IOException {
    word(code, DxfText.escaped(value));
  }

  /** A whole number. */
  void whole(int code, int value) throws IOException {
    word(code, Integer.toString(value));
  }

  /** A handle, in hexadecimal. */
  void handle(int code, int value) throws IOException {
    word(code, Integer.toHexString(value).toUpperCase(Locale.ROOT));
  }

  /** A number without a unit. */
  void real(int code, double value) throws IOException {
    word(code, decimal(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP)));
  }

  /** The bulge of the edge that starts at the vertex written last; a straight one needs none. */
  void bulge(double value) throws IOException {
    if (value != 0) {
      real(42, value);
    }
  }

  /** A length, in the unit of the drawing. */
  void length(int code, Length value) throws IOException {
    word(
        code,
        decimal(
            BigDecimal.valueOf(value.nanometres())
                .divide(BigDecimal.valueOf(unit.nanometres()), DECIMALS, RoundingMode.HALF_UP)));
  }

  /** The x of a point with {@code code}, its y with the code 10 above. */
  void point(int code, Point2 at) throws IOException {
    length(code, at.x());
    length(code + 10, at.y());
  }

  /** A point and a z of zero. */
  void flatPoint(int code, Point2 at) throws IOException {
    point(code, at);
    length(code + 20, Length.ZERO);
  }

  /** A section and what stands in it. */
  void section(String name, Body body) throws IOException {
    word(0, "SECTION");
    word(2, name);
    body.write();
    word(0, "ENDSEC");
  }

  /** Passes on what is written so far. */
  void flush() throws IOException {
    out.flush();
  }

  private static String decimal(BigDecimal value) {
    BigDecimal shortest = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return (shortest.scale() < 1 ? shortest.setScale(1) : shortest).toPlainString();
  }

  /** Tags that stand between a begin and an end. */
  interface Body {

    /** Writes them. */
    void write() throws IOException;
  }
}
