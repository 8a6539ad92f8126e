package org.slatwright.exporter.svg;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.export.ExportException;
import org.slatwright.testkit.Approved;

/** Every figure, as somebody found it right. */
class GoldenSheetTest {

  @ParameterizedTest
  @ValueSource(strings = {"font", "outlines"})
  void everyFigureIsWrittenAsApproved(String text) throws ExportException, IOException {
    String received = new String(Exported.bytes(FigureSheet.sheet(), text), StandardCharsets.UTF_8);
    Approved.check(getClass(), "every-figure." + text + ".approved.svg", received);
  }
}
