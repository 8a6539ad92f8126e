package org.slatwright.exporter.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;

/** Spells values as JSON: UTF-8, indented, the same on every machine. */
final class JsonWriter {

  private static final LengthFormat MILLIMETRES = new LengthFormat(Unit.MM);

  private final JsonGenerator json;

  /** Writes to {@code out}, which stays open. */
  JsonWriter(OutputStream out) throws IOException {
    // Through a Writer, which makes a question mark of half a character instead of giving up.
    json = new JsonFactory().createGenerator(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    json.setPrettyPrinter(
        new DefaultPrettyPrinter(
                Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER))
            .withObjectIndenter(new DefaultIndenter("  ", "\n")));
  }

  /** The one value of the file: an object. Ends with a line end. */
  void file(Body body) throws IOException {
    object(body);
    json.writeRaw('\n');
    json.flush();
  }

  /** An object in a list. */
  void object(Body body) throws IOException {
    json.writeStartObject();
    body.write();
    json.writeEndObject();
  }

  /** An object under a key. */
  void object(String key, Body body) throws IOException {
    json.writeFieldName(key);
    object(body);
  }

  /** A list of objects, each written by {@code each} between its braces. */
  <T> void objects(String key, List<T> items, Each<T> each) throws IOException {
    list(key, items, item -> object(() -> each.write(item)));
  }

  /** A list of texts. */
  void texts(String key, List<String> items) throws IOException {
    list(key, items, json::writeString);
  }

  /** A list of counts. */
  void wholes(String key, List<Integer> items) throws IOException {
    list(key, items, json::writeNumber);
  }

  /** A list of lengths. */
  void lengths(String key, List<Length> items) throws IOException {
    list(key, items, this::length);
  }

  /** Any text. */
  void text(String key, String value) throws IOException {
    json.writeStringField(key, value);
  }

  /** One of a closed set of names, in lower-case words joined by hyphens. */
  void name(String key, Enum<?> value) throws IOException {
    text(key, value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** A way along an axis: {@code +x}, {@code -z}. */
  void direction(String key, Direction value) throws IOException {
    text(key, (value.sign() > 0 ? "+" : "-") + value.axis().name().toLowerCase(Locale.ROOT));
  }

  /** A count. */
  void whole(String key, long value) throws IOException {
    json.writeNumberField(key, value);
  }

  /** Exact, with the digits that it has. */
  void decimal(String key, BigDecimal value) throws IOException {
    json.writeFieldName(key);
    json.writeNumber(value.toPlainString());
  }

  /** Yes or no. */
  void flag(String key, boolean value) throws IOException {
    json.writeBooleanField(key, value);
  }

  /** In millimetres, every digit. */
  void length(String key, Length value) throws IOException {
    json.writeFieldName(key);
    length(value);
  }

  /** As {@code [x, y]}. */
  void point(String key, Point2 value) throws IOException {
    lengths(key, List.of(value.x(), value.y()));
  }

  /** As {@code [x, y, z]}. */
  void point(String key, Point3 value) throws IOException {
    lengths(key, List.of(value.x(), value.y(), value.z()));
  }

  /** A list of points, each as {@code [x, y]}. */
  void points(String key, List<Point2> items) throws IOException {
    list(
        key,
        items,
        point -> {
          json.writeStartArray();
          length(point.x());
          length(point.y());
          json.writeEndArray();
        });
  }

  private void length(Length value) throws IOException {
    json.writeNumber(MILLIMETRES.decimal(value));
  }

  private <T> void list(String key, List<T> items, Each<T> each) throws IOException {
    json.writeArrayFieldStart(key);
    for (T item : items) {
      each.write(item);
    }
    json.writeEndArray();
  }

  /** What stands between two braces. */
  interface Body {

    /** Writes it. */
    void write() throws IOException;
  }

  /** How one of several is written. */
  interface Each<T> {

    /** Writes {@code item}. */
    void write(T item) throws IOException;
  }
}
