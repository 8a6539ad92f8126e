package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

/** Room, size, rest and silence. */
class ScreenTest extends AtTheBench {

  private static final int LONGEST = SamplePlans.ODD_TITLES.size() - 1;

  /** WCAG 2.2, 1.4.10 Reflow, asks for 320 CSS pixels; the smallest phones in use have 360. */
  @Test
  void aNarrowScreenNeverScrollsSideways() throws Exception {
    List<Plan> plans = new ArrayList<>(SamplePlans.examples());
    plans.add(PLAN);
    plans.add(SamplePlans.titled(SamplePlans.ODD_TITLES.get(LONGEST)));
    for (Plan plan : plans) {
      browser.open(Written.file(plan, folder));
      for (int width : List.of(320, 360, 1280)) {
        browser.size(width, 800, width < 1000);
        for (String unit : List.of("mm", "in")) {
          browser.script("document.documentElement.dataset.unit = arguments[0]", unit);
          long wide = browser.number("return document.documentElement.scrollWidth");
          assertTrue(wide <= width, plan.title() + " is " + wide + " wide on " + width);
        }
      }
    }
  }

  /** WCAG 2.2, 2.5.5 Target Size (Enhanced): 44 by 44 CSS pixels, links in a sentence aside. */
  @Test
  void whatIsTouchedIsLargeEnoughForAThumb() {
    String small =
        "return [...document.querySelectorAll('label, button, nav a, .bar a')]"
            + ".filter(e => e.checkVisibility())"
            + ".map(e => [e, e.getBoundingClientRect()])"
            + ".filter(([e, r]) => r.width < 44 || r.height < 44)"
            + ".map(([e, r]) => `${e.outerHTML} is ${r.width} x ${r.height}`)";
    assertEquals(List.of(), browser.script(small));
    browser.touch("[data-enlarge]");
    assertEquals(List.of(), browser.script(small));
  }

  /** WCAG 2.2, 2.3.3 Animation from Interactions: what does not move needs no switch. */
  @Test
  void nothingMovesByItself() {
    browser.touch("[data-dark]");
    tick("step-glue-frame-1");
    browser.touch("[data-enlarge]");
    assertEquals(0L, browser.number("return document.getAnimations().length"));
    String scroll = "return getComputedStyle(document.documentElement).scrollBehavior";
    assertEquals("auto", browser.text(scroll));
  }

  @Test
  void nothingIsAskedForAndNothingGoesWrong() {
    browser.reload();
    browser.all("[data-tick]").forEach(WebElement::click);
    browser.touch(".units input[value=in]");
    browser.touch("[data-dark]");
    browser.touch("[data-enlarge]");
    assertEquals(List.of(), browser.requests());
    assertEquals(List.of(), browser.complaints());
    assertEquals(true, browser.script("return document.fonts.check('9px \"Sheet Lettering\"')"));
  }

  /** That the watch on requests sees one: a picture from elsewhere, put in past the policy. */
  @Test
  void aRequestWouldBeSeen() throws Exception {
    String page = Written.page(PLAN).replaceFirst("<meta http-equiv=[^>]*>", "");
    String asking = page.replace("</main>", "<img src=\"https://example.invalid/a.png\"></main>");
    browser.open(java.nio.file.Files.writeString(folder.resolve("asking.html"), asking));
    assertEquals(List.of("https://example.invalid/a.png"), browser.requests());
  }

  /** The policy stops what a careless change might let in. */
  @Test
  void thePolicyStopsARequest() throws Exception {
    String asking =
        Written.page(PLAN).replace("</main>", "<img src=\"https://example.invalid/a.png\"></main>");
    browser.open(java.nio.file.Files.writeString(folder.resolve("asking.html"), asking));
    assertTrue(
        browser.complaints().stream().anyMatch(said -> said.contains("Content Security Policy")));
  }
}
