package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** What one page says, and how two of them differ. */
class PageContentTest {

  @Test
  void aPlanOfNothingButItsPartsIsStillAPage() throws Exception {
    Document page = Written.document(SamplePlans.bare(SamplePlans.everyKind()));
    assertEquals(
        List.of("sizes", "findings", "holes", "quantities", "about"),
        page.select("section").eachAttr("id"));
    assertTrue(page.select("#findings").text().contains("Local codes"));
    assertEquals(0, page.select("[data-tick]").size());
  }

  @Test
  void theContentsNameEverySection() throws Exception {
    Document page = Written.document(WareRack.inMillimetres());
    assertEquals(page.select("section h2").eachText(), page.select("nav a").eachText());
  }

  @Test
  void templatesAreForThePrinterAtFullScale() throws Exception {
    Plan plan =
        SamplePlans.examples().stream()
            .filter(example -> !example.templates().whole().isEmpty())
            .findFirst()
            .orElseThrow();
    String said = Written.document(plan).select("#templates").text();
    assertTrue(said.contains("templates.pdf"), said);
    assertTrue(said.contains("at 100 %"), said);
    assertTrue(said.contains(plan.templates().whole().get(0).title()), said);
  }

  @Test
  void massesAndAreasAreSpeltInBothUnits() throws Exception {
    Document page = Written.document(WareRack.inMillimetres());
    // 6500 g and 1.25 m² of the ware rack; 1 lb = 453.59237 g, 1 sq ft = 0.09290304 m².
    assertEquals("6.5 kg", page.select("#sizes .in-mm:contains(kg)").text());
    assertEquals("14.3 lb", page.select("#sizes .in-in:contains(lb)").text());
    assertEquals("13 sq ft", page.select("#quantities .in-in:contains(sq ft)").text());
  }

  @Test
  void ticksOfOneRackAreNotThoseOfAnother() throws Exception {
    String metric = key(WareRack.inMillimetres());
    assertEquals(metric, key(WareRack.inMillimetres()));
    assertNotEquals(metric, key(WareRack.inInches()));
    assertNotEquals(key(SamplePlans.titled("one")), key(SamplePlans.titled("other")));
    assertEquals(
        key(SamplePlans.everyKind()),
        key(SamplePlans.withoutDrawings(SamplePlans.everyKind())),
        "drawings are nothing to tick");
  }

  private static String key(Plan plan) throws Exception {
    return Written.document(plan).body().attr("data-plan");
  }
}
