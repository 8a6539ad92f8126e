package org.slatwright.exporter.html;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

/** A page with every kind of statement on a phone that has no network and remembers nothing yet. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class AtTheBench {

  static final Plan PLAN = SamplePlans.everyKind();

  static final int WIDTH = 390;
  static final int HEIGHT = 844;

  @TempDir static Path folder;
  Browser browser;

  @BeforeAll
  void start() {
    browser = Browser.start(folder.resolve("profile"));
  }

  @BeforeEach
  void openAnew() throws Exception {
    browser.wish("light");
    browser.size(WIDTH, HEIGHT, true);
    browser.open(Written.file(PLAN, folder));
    browser.script("localStorage.clear()");
    browser.reload();
    browser.forget();
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  void tick(String id) {
    browser.touch("[data-tick='" + id + "']");
  }

  /** The ids of all boxes that are ticked, from the top. */
  List<String> ticked() {
    return browser.all("[data-tick]:checked").stream()
        .map(box -> box.getDomAttribute("data-tick"))
        .toList();
  }

  /** The unit that the page shows. */
  String unit() {
    return browser.text("return document.documentElement.dataset.unit");
  }

  /**
   * Left, top, width and height of what is seen of the drawing in the viewer, in mm on its paper.
   */
  double[] seen() {
    String[] numbers = browser.one(".stage svg").getDomAttribute("viewBox").split(" ");
    return List.of(numbers).stream().mapToDouble(Double::parseDouble).toArray();
  }
}
