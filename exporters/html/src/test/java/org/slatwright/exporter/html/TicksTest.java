package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.slatwright.testkit.SamplePlans;

class TicksTest extends AtTheBench {

  @Test
  void aTickHoldsOverAReloadUntilAllAreCleared() {
    long boxes = browser.all("[data-tick]").size();
    tick("step-glue-frame-1");
    tick("cut-" + PLAN.cutList().get(0).part().mark());
    List<String> both = ticked();
    assertEquals(2, both.size());
    assertEquals("2 of " + boxes + " done", progress(".bar"));
    assertEquals("1 of " + PLAN.work().steps().size() + " done", progress("#work"));
    browser.reload();
    assertEquals(both, ticked());
    assertEquals("2 of " + boxes + " done", progress(".bar"));

    browser.touch("[data-clear]");
    browser.touch("#clearing [data-action=keep]");
    assertEquals(both, ticked(), "asked first");
    browser.touch("[data-clear]");
    browser.touch("#clearing [data-action=clear]");
    assertEquals(List.of(), ticked());
    browser.reload();
    assertEquals(List.of(), ticked());
    assertEquals("0 of " + boxes + " done", progress(".bar"));
  }

  @Test
  void ticksOfAnotherPlanAreNotShown() throws Exception {
    tick("step-glue-frame-1");
    String other = Written.page(SamplePlans.titled("Another rack"));
    browser.open(Files.writeString(folder.resolve("other.html"), other));
    assertEquals(List.of(), ticked());
  }

  /** As where a browser is told to keep nothing: every use of the storage throws. */
  @Test
  void withoutAPlaceToKeepThemTicksHoldUntilThePageIsClosed() {
    Map<String, Object> source =
        Map.of(
            "source",
            "Object.defineProperty(window, 'localStorage', {get() { throw new Error(); }})");
    Map<String, Object> added = browser.cdp("Page.addScriptToEvaluateOnNewDocument", source);
    browser.reload();
    tick("step-glue-frame-1");
    assertEquals("1 of " + PLAN.work().steps().size() + " done", progress("#work"));
    browser.touch(".units input[value=in]");
    assertEquals("in", unit());
    browser.reload();
    assertEquals(List.of(), ticked());
    assertEquals(List.of(), browser.complaints());
    browser.cdp("Page.removeScriptToEvaluateOnNewDocument", added);
  }

  @Test
  void rubbishInTheStorageIsNoHarm() {
    String key = browser.text("return document.body.dataset.plan");
    for (String rubbish : List.of("{", "7", "null", "{\"a\":1}", "[null,{},\"buy-1\"]")) {
      browser.script("localStorage.setItem(arguments[0], arguments[1])", key, rubbish);
      browser.script("localStorage.setItem(arguments[0] + '-unit', 'ell')", key);
      browser.reload();
      assertTrue(progress(".bar").matches("[01] of \\d+ done"), rubbish);
      assertEquals("mm", unit());
    }
    assertEquals(List.of("buy-1"), ticked());
    assertEquals(List.of(), browser.complaints());
  }

  private String progress(String place) {
    return browser.one(place + " .progress").getText();
  }
}
