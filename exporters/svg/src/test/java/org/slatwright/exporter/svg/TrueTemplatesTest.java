package org.slatwright.exporter.svg;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.SeenPage;

/**
 * Template pages drawn at 600 dots an inch by librsvg, and printed by Chromium, readers outside the
 * project: every paper and both units by either, a page of another example each time. Lines and
 * holes lie within 0.05 mm over a page. They take seconds a page; every example on every paper is
 * in the test of the same name of the pdf exporter.
 */
class TrueTemplatesTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "LIBRSVG, A4, MM",
    "LIBRSVG, A3, INCH",
    "LIBRSVG, LETTER, INCH",
    "LIBRSVG, TABLOID, MM",
    "CHROMIUM, A4, INCH",
    "CHROMIUM, A3, MM",
    "CHROMIUM, LETTER, MM",
    "CHROMIUM, TABLOID, INCH"
  })
  void aPageIsTrue(Renderer renderer, Paper paper, Unit unit) throws Exception {
    List<Supplier<Plan>> plans = SamplePlans.examples(unit, paper);
    int turn = paper.ordinal() + 2 * renderer.ordinal();
    List<Sheet> pages = plans.get(turn % plans.size()).get().templates().pages();
    Sheet page = pages.get(7 * turn % pages.size());
    byte[] svg = Exported.bytes(page, "outlines");
    new SeenPage(page, renderer.draw(svg, folder)).assertTrueToSize();
  }
}
