package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

/** What axe-core, a checker of the rules of WCAG 2.1 A and AA and of good practice, finds. */
class AccessTest extends AtTheBench {

  private static final String AXE = "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js";

  private String axe;

  @BeforeEach
  void readAxe() throws Exception {
    try (InputStream in = AccessTest.class.getResourceAsStream(AXE)) {
      axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void nothingIsFoundInLightOrDarkOnAPhoneOrAtADesk() throws Exception {
    tickEveryOther(PLAN);
    for (String scheme : List.of("light", "dark")) {
      browser.wish(scheme);
      browser.size(WIDTH, HEIGHT, true);
      assertEquals(List.of(), found(), "on a phone, " + scheme);
      browser.size(1280, 900, false);
      assertEquals(List.of(), found(), "at a desk, " + scheme);
    }
  }

  @Test
  void nothingIsFoundWhereTheTitleRunsFromRightToLeft() throws Exception {
    tickEveryOther(SamplePlans.titled("رف الشتلات 3 × 4"));
    assertEquals(List.of(), found());
  }

  private void tickEveryOther(Plan plan) throws Exception {
    browser.open(Written.file(plan, folder));
    browser.script(
        "document.querySelectorAll('[data-tick]').forEach((b, i) => i % 2 || b.click())");
  }

  @Test
  void nothingIsFoundInWhatOpensOverThePage() {
    browser.touch("[data-enlarge]");
    assertEquals(List.of(), found());
    browser.touch("[data-action=close]");
    browser.touch("[data-clear]");
    assertEquals(List.of(), found());
  }

  /** That the checker is at work: without its name, a box is found. */
  @Test
  void aBoxWithoutANameWouldBeFound() {
    browser.script("document.querySelector('td [data-tick]').removeAttribute('aria-label')");
    assertEquals(1, found().size());
  }

  /**
   * Rule and place of everything serious or critical. What it could not decide does not count; what
   * a drawing is made of is not looked at, since to a reader each drawing is one picture.
   */
  private List<?> found() {
    browser.script(axe);
    return (List<?>)
        browser.scriptWithCallback(
            "const done = arguments[arguments.length - 1];"
                + "axe.run({exclude: [['svg > g']]}).then(({violations}) => done(violations"
                + ".filter(v => v.impact === 'serious' || v.impact === 'critical')"
                + ".map(v => `${v.id}: ${v.nodes.map(n => n.html + ' ' + n.failureSummary)}`)),"
                + "error => done([String(error)]))");
  }
}
