package org.slatwright.exporter.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonWriterTest {

  @Property(tries = 200)
  void everyLengthIsExactDecimalMillimetres(@ForAll long nanometres) throws IOException {
    String json = written("l", new Length(nanometres));
    String number = json.substring(json.indexOf(':') + 1, json.indexOf('}')).strip();
    assertTrue(number.matches("-?[0-9]+(\\.[0-9]{1,6})?"), number);
    assertEquals(nanometres, new BigDecimal(number).movePointRight(6).longValueExact());
  }

  @Property(tries = 200)
  void anyTextIsReadBackWholeButForHalfCharacters(@ForAll String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    JsonWriter json = new JsonWriter(bytes);
    json.file(() -> json.text("t", text));
    JsonNode read = new JsonMapper().readTree(bytes.toString(StandardCharsets.UTF_8));
    String whole = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    assertEquals(whole, read.get("t").asString());
  }

  @Test
  void aFileEndsWithALineEndAndZeroHasNoSign() throws IOException {
    assertEquals("{\n  \"l\": 0\n}\n", written("l", Length.ZERO));
    assertEquals("{\n  \"l\": 37.6\n}\n", written("l", Length.roundedMm(37.6)));
    assertEquals("{\n  \"l\": -0.000001\n}\n", written("l", new Length(-1)));
  }

  private static String written(String key, Length length) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    JsonWriter json = new JsonWriter(bytes);
    json.file(() -> json.length(key, length));
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
