package org.slatwright.exporter.png;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.export.OptionValues;
import org.slatwright.testkit.OutsideTool;
import org.slatwright.testkit.SamplePlans;

/** A container without fonts or a display is enough. */
class NoDisplayTest {

  /** What asks the machine for its fonts or its display, and what reads pictures of any format. */
  private static final String OF_THE_MACHINE =
      ".* (sun\\.font\\.\\w*(Manager|Config|Strike)|sun\\.awt\\.FontConfiguration|"
          + "sun\\.awt\\.X11\\.|javax\\.imageio\\.).*";

  @Test
  void exportingTouchesNeitherTheDisplayNorTheFontsOfTheMachine()
      throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String log =
        OutsideTool.thatRuns(java, "-version")
            .run(
                "-Xlog:class+load",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                ExportOnce.class.getName());
    assertTrue(log.contains(PngWriter.class.getName() + " "), "the exporter ran");
    assertEquals(List.of(), log.lines().filter(line -> line.matches(OF_THE_MACHINE)).toList());
  }

  /** What the other Java does. */
  static final class ExportOnce {

    private ExportOnce() {}

    public static void main(String[] none) throws Exception {
      PngExporter exporter = new PngExporter();
      exporter.export(
          SamplePlans.everyKind(),
          OptionValues.defaults(exporter.options()),
          (name, content) -> content.writeTo(OutputStream.nullOutputStream()));
    }
  }
}
