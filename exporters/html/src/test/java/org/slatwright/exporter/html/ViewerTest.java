package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** A drawing over the whole screen. */
class ViewerTest extends AtTheBench {

  private static final double STEP = 1.4;

  private double[] whole;

  @BeforeEach
  void enlarge() {
    browser.touch("[data-enlarge]");
    whole = seen();
  }

  @Test
  void buttonsZoomAboutTheMiddle() {
    action("in");
    double[] larger = seen();
    assertEquals(whole[2] / STEP, larger[2], 1e-6);
    assertEquals(whole[3] / STEP, larger[3], 1e-6);
    assertEquals(whole[0] + whole[2] / 2, larger[0] + larger[2] / 2, 1e-6);
    action("out");
    assertEquals(whole[2], seen()[2], 1e-6);
    action("out");
    assertEquals(whole[2], seen()[2], 1e-6, "no smaller than whole");
  }

  @Test
  void theWheelZoomsAndWholeShowsAll() {
    browser.wheel(".stage", -300);
    assertTrue(seen()[2] < whole[2]);
    action("all");
    assertEquals(whole[2], seen()[2], 1e-6);
    assertEquals(whole[0], seen()[0], 1e-6);
  }

  @Test
  void keysZoomAndMove() {
    browser.press("+");
    browser.press("+");
    browser.press(Keys.ARROW_RIGHT);
    double[] moved = seen();
    assertEquals(whole[2] / STEP / STEP, moved[2], 1e-6);
    assertTrue(moved[0] + moved[2] / 2 > whole[0] + whole[2] / 2, "to the right");
    browser.press("0");
    assertEquals(whole[2], seen()[2], 1e-6);
  }

  @Test
  void twoFingersZoomAndOneMoves() {
    int middle = WIDTH / 2;
    fingers("touchStart", middle - 60, middle + 60);
    fingers("touchMove", middle - 120, middle + 120);
    fingers("touchEnd");
    assertEquals(whole[2] / 2, seen()[2], whole[2] * 0.02, "twice as far apart");
    double left = seen()[0];
    fingers("touchStart", 200);
    fingers("touchMove", 150);
    fingers("touchEnd");
    assertTrue(seen()[0] > left);
  }

  @Test
  void sheetFollowsSheetAndEachGoesBackWhole() {
    List<String> titles =
        browser.all("figure.sheet").stream().map(f -> f.getDomAttribute("data-title")).toList();
    assertEquals(PLAN.sheets().size(), titles.size());
    for (String title : titles) {
      assertEquals(title, browser.one("#viewer-title").getText());
      action("in");
      action("next");
    }
    assertEquals(titles.get(0), browser.one("#viewer-title").getText(), "round");
    action("in");
    browser.press(Keys.ESCAPE);
    assertFalse(browser.one("#viewer").isDisplayed());
    List<String> boxes =
        browser.all("figure.sheet > .paper > svg").stream()
            .map(svg -> svg.getDomAttribute("viewBox"))
            .toList();
    assertEquals(titles.size(), boxes.size());
    boxes.forEach(box -> assertTrue(box.startsWith("0 0 "), box));
  }

  private void action(String name) {
    browser.touch("#viewer [data-action=" + name + "]");
  }

  /** Fingers on the glass, in a row across the middle. */
  private void fingers(String type, int... lefts) {
    List<Map<String, Object>> points = new ArrayList<>();
    for (int left : lefts) {
      points.add(Map.of("x", left, "y", HEIGHT / 2, "id", points.size()));
    }
    browser.cdp("Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", points));
  }
}
