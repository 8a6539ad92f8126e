package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.plan.CutLine;
import org.slatwright.testkit.OutsideTool;

/** On paper, as Chromium prints it and poppler reads it. */
class PrintTest extends AtTheBench {

  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final Pattern SIZE =
      Pattern.compile("Page +\\d+ size: +([0-9.]+) x ([0-9.]+) pts");

  private Path pdf;

  @BeforeEach
  void print() throws Exception {
    OutsideTool.thatRuns("pdftotext", "-v");
    browser.all("[data-tick]").get(0).click();
    browser.wish("dark");
    pdf = Files.write(folder.resolve("printed.pdf"), browser.printed());
  }

  @Test
  void thePlanIsThereAndTheControlsAreNot() throws Exception {
    String said = OutsideTool.thatRuns("pdftotext", "-v").run("-layout", pdf.toString(), "-");
    for (CutLine line : PLAN.cutList()) {
      assertTrue(said.contains(line.part().mark() + " " + line.part().name()), said);
    }
    PLAN.work().steps().forEach(step -> assertTrue(said.contains(step.title()), step.title()));
    for (String control : List.of("Clear ticks", "Enlarge", "Skip to", "Contents", " done")) {
      assertFalse(said.contains(control), control);
    }
  }

  /** Each sheet once, on a page of its own size: so it is neither split nor scaled. */
  @Test
  void everySheetHasAPageOfItsOwnSize() throws Exception {
    String said = OutsideTool.thatRuns("pdfinfo", "-v").run("-f", "1", "-l", "99", pdf.toString());
    List<String> pages = new ArrayList<>();
    for (Matcher size = SIZE.matcher(said); size.find(); ) {
      pages.add(rounded(size.group(1)) + " x " + rounded(size.group(2)));
    }
    for (Sheet sheet : PLAN.sheets()) {
      String wanted = points(sheet.widthMm()) + " x " + points(sheet.heightMm());
      assertTrue(pages.remove(wanted), wanted + " is not among " + pages);
    }
  }

  /** Ink on white, whatever the screen was like, and no tick of this maker's. */
  @Test
  void boxesAreEmptyAndThePaperIsWhite() {
    browser.cdp("Emulation.setEmulatedMedia", java.util.Map.of("media", "print"));
    String mark =
        "return getComputedStyle(document.querySelector('[data-tick]:checked'), '::before')"
            + ".borderRightColor";
    assertEquals("rgba(0, 0, 0, 0)", browser.text(mark));
    String box =
        "return getComputedStyle(document.querySelector('[data-tick]:checked')).backgroundColor";
    assertEquals("rgba(0, 0, 0, 0)", browser.text(box));
    String ink = "return getComputedStyle(document.querySelector('.line-visible')).stroke";
    assertEquals("rgb(0, 0, 0)", browser.text(ink));
    String text = "return getComputedStyle(document.body).color";
    assertEquals("rgb(27, 36, 32)", browser.text(text));
  }

  private static long points(double mm) {
    return Math.round(mm * POINTS_PER_MM);
  }

  private static long rounded(String points) {
    return Math.round(Double.parseDouble(points));
  }
}
