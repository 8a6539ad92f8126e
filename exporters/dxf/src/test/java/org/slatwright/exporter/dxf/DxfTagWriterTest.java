package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

class DxfTagWriterTest {

  @Test
  void aTagIsItsCodeAndItsValueOnALineEach() throws IOException {
    assertEquals("0\nSECTION\n2\nHEADER\n0\nENDSEC\n", written(t -> t.section("HEADER", () -> {})));
  }

  @Test
  void anglesAreWrittenWithoutSignOrExponentWhereThereIsNone() throws IOException {
    assertEquals("42\n0.0\n", written(tags -> tags.real(42, -0.0)));
    assertEquals("42\n0.0\n", written(tags -> tags.real(42, -1e-15)));
    assertEquals("42\n0.0000001\n", written(tags -> tags.real(42, 1e-7)));
    assertEquals("42\n0.414213562373\n", written(tags -> tags.real(42, Math.tan(Math.PI / 8))));
  }

  @Test
  void aLengthHasADecimalPointAndTheUnitOfTheDrawing() throws IOException {
    assertEquals("40\n100.0\n", written(tags -> tags.length(40, Length.mm(100))));
    assertEquals("40\n37.6\n", written(tags -> tags.length(40, Length.roundedMm(37.6))));
    assertEquals("40\n-0.000001\n", written(tags -> tags.length(40, new Length(-1))));
    assertEquals("40\n0.140625\n", inches(tags -> tags.length(40, Length.inches(9, 64))));
  }

  @Property(tries = 200)
  void everyLengthReadsBackToTheNanometre(
      @ForAll @LongRange(min = -10_000_000_000L, max = 10_000_000_000L) long nanometres,
      @ForAll Unit unit)
      throws IOException {
    String value = value(written(unit, tags -> tags.length(40, new Length(nanometres))));
    assertTrue(value.matches("-?[0-9]+\\.[0-9]+"), value);
    long read =
        new BigDecimal(value)
            .multiply(BigDecimal.valueOf(unit.nanometres()))
            .setScale(0, RoundingMode.HALF_UP)
            .longValueExact();
    assertEquals(nanometres, read);
  }

  @Property(tries = 200)
  void anyTextIsOneShortAsciiLine(@ForAll String text) throws IOException {
    String line = value(written(tags -> tags.text(1, text)));
    assertTrue(line.matches("[ -~]{0,255}"), line);
  }

  private static String value(String tag) {
    return tag.substring(tag.indexOf('\n') + 1, tag.length() - 1);
  }

  private static String written(Tags tags) throws IOException {
    return written(Unit.MM, tags);
  }

  private static String inches(Tags tags) throws IOException {
    return written(Unit.INCH, tags);
  }

  private static String written(Unit unit, Tags tags) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DxfTagWriter writer = new DxfTagWriter(bytes, unit);
    tags.writeTo(writer);
    writer.flush();
    return bytes.toString(StandardCharsets.US_ASCII);
  }

  private interface Tags {
    void writeTo(DxfTagWriter tags) throws IOException;
  }
}
