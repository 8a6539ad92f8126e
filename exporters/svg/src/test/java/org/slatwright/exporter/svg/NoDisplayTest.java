package org.slatwright.exporter.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.testkit.OutsideTool;

/** A container without fonts or a display is enough. */
class NoDisplayTest {

  @Test
  void exportingTouchesNeitherTheDisplayNorTheFontsOfTheMachine()
      throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String log =
        OutsideTool.thatRuns(java, "-version")
            .run(
                "-Xlog:class+load",
                "-cp",
                System.getProperty("java.class.path"),
                ExportOnce.class.getName());
    assertTrue(log.contains("org.apache.batik.svggen.SVGShape "), "the exporter ran");
    List<String> touched =
        log.lines()
            .filter(line -> line.matches(".*(sun\\.font\\.|sun\\.awt\\.|java\\.awt\\.Font).*"))
            .toList();
    assertEquals(List.of(), touched);
  }

  /** What the other Java does. */
  static final class ExportOnce {

    private ExportOnce() {}

    public static void main(String[] none) throws Exception {
      Exported.bytes(FigureSheet.sheet(), "font");
      Exported.bytes(FigureSheet.sheet(), "outlines");
    }
  }
}
