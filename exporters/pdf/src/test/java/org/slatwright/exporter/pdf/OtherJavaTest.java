package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.OutsideTool;
import org.slatwright.testkit.SamplePlans;

/** What the exporter needs of the machine, seen in a Java of its own. */
class OtherJavaTest {

  private static final int PAGES = 500;
  private static final String CLASS_PATH = System.getProperty("java.class.path");

  /** A page takes about 9 KB until its book is written; the books come one after the other. */
  @Test
  void fiveHundredTemplatePagesAreWrittenInAHeapOf24Megabytes() throws Exception {
    String said = java("-Xmx24m", "-XX:TieredStopAtLevel=1", ManyPages.class);
    assertTrue(said.contains("templates.pdf, plan-book.pdf"), said);
  }

  @Test
  void theFontsOfTheMachineAreLeftAlone() throws Exception {
    String log = java("-Xlog:class+load", "-Djava.awt.headless=true", OneOfEveryKind.class);
    assertTrue(log.contains("org.apache.pdfbox.pdmodel.PDDocument "), "the exporter ran");
    List<String> touched =
        log.lines()
            .filter(line -> line.matches(".*(sun\\.font\\.|java\\.awt\\.Font |FontProvider).*"))
            .toList();
    assertEquals(List.of(), touched);
  }

  private static String java(String first, String second, Class<?> main) throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return OutsideTool.thatRuns(java, "-version")
        .run(first, second, "-cp", CLASS_PATH, main.getName());
  }

  /** What the first does. */
  static final class ManyPages {

    private ManyPages() {}

    public static void main(String[] none) throws Exception {
      Sheet page = SamplePlans.titled("Many pages").sheets().get(0);
      Plan plan = Exported.plan(List.of(), Collections.nCopies(PAGES, page));
      PdfExporter exporter = new PdfExporter();
      StringBuilder written = new StringBuilder();
      exporter.export(
          plan,
          OptionValues.defaults(exporter.options()),
          (name, content) -> {
            content.writeTo(OutputStream.nullOutputStream());
            written.append(written.isEmpty() ? "" : ", ").append(name);
          });
      System.out.println(written);
    }
  }

  /** What the second does. */
  static final class OneOfEveryKind {

    private OneOfEveryKind() {}

    public static void main(String[] none) throws Exception {
      Exported.files(SamplePlans.everyKind());
    }
  }
}
