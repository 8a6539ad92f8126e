package org.slatwright.exporter.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.export.ExportException;

/**
 * Every figure as it is written. After a change, run with {@code -Dslatwright.accept=true}, then
 * open the approved files and look at them.
 */
class GoldenSheetTest {

  private static final Path APPROVED =
      Path.of("src", "test", "resources", "org", "slatwright", "exporter", "svg");

  @ParameterizedTest
  @ValueSource(strings = {"font", "outlines"})
  void everyFigureIsWrittenAsApproved(String text) throws ExportException, IOException {
    byte[] written = Exported.bytes(FigureSheet.sheet(), text);
    Path approved = APPROVED.resolve("every-figure." + text + ".approved.svg");
    if (Boolean.getBoolean("slatwright.accept")) {
      Files.createDirectories(APPROVED);
      Files.write(approved, written);
    }
    assertEquals(Files.readString(approved), new String(written, StandardCharsets.UTF_8));
  }
}
