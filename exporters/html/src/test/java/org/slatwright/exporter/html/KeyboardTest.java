package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** Without a mouse. */
class KeyboardTest extends AtTheBench {

  private static final int MOST_STOPS = 200;

  @BeforeEach
  void atADesk() {
    browser.size(1280, 900, false);
  }

  @Test
  void theFirstStopSkipsToThePlan() {
    browser.press(Keys.TAB);
    assertEquals("Skip to the plan", focused("textContent"));
    assertSeen();
    browser.press(Keys.ENTER);
    assertEquals("#plan", browser.text("return location.hash"));
  }

  @Test
  void boxesAreTickedAndClearedWithKeys() {
    tabTo("[data-tick]");
    assertSeen();
    browser.press(Keys.SPACE);
    assertEquals(1, ticked().size());
    browser.script("document.activeElement.blur(); scrollTo(0, 0)");
    tabTo("[data-clear]");
    browser.press(Keys.ENTER);
    assertTrue(browser.one("#clearing").isDisplayed());
    browser.press(Keys.ESCAPE);
    assertEquals(1, ticked().size());
    assertTrue(focusIs("[data-clear]"), "back where it was");
  }

  @Test
  void unitAndDarkAreChosenWithKeys() {
    tabTo(".units input");
    browser.press(Keys.ARROW_RIGHT);
    assertEquals("in", unit());
    tabTo("[data-dark]");
    browser.press(Keys.SPACE);
    assertEquals("dark", browser.text("return document.documentElement.dataset.theme"));
  }

  @Test
  void aDrawingIsOpenedZoomedAndClosedWithKeys() {
    tabTo("[data-enlarge]");
    browser.press(Keys.ENTER);
    double[] whole = seen();
    browser.press("+");
    assertTrue(seen()[2] < whole[2]);
    tabTo("[data-action=close]");
    browser.press(Keys.ENTER);
    assertTrue(focusIs("[data-enlarge]"), "back where it was");
  }

  /** WCAG 2.2, 2.4.11 Focus Not Obscured: the bar hides nothing that has the focus. */
  @Test
  void nothingThatHasTheFocusIsUnderTheBar() {
    browser.script("document.querySelector('[data-tick]:last-of-type').focus()");
    browser.script("[...document.querySelectorAll('[data-tick]')].pop().focus()");
    for (int i = 0; i < browser.all("[data-tick]").size(); i++) {
      browser.chord(Keys.SHIFT, Keys.TAB);
      String clear =
          "const bar = document.querySelector('.bar').getBoundingClientRect();"
              + "const box = document.activeElement.getBoundingClientRect();"
              + "return document.activeElement.closest('.bar, nav') !== null"
              + " || box.top >= bar.bottom";
      assertEquals(true, browser.script(clear), () -> focused("outerHTML"));
    }
  }

  private void assertSeen() {
    String style = "return getComputedStyle(document.activeElement).outlineStyle";
    assertNotEquals("none", browser.text(style), "the focus is seen");
  }

  private void tabTo(String selector) {
    for (int i = 0; i < MOST_STOPS && !focusIs(selector); i++) {
      browser.press(Keys.TAB);
    }
    assertTrue(focusIs(selector), "the tabulator never comes to " + selector);
  }

  private boolean focusIs(String selector) {
    return Boolean.TRUE.equals(
        browser.script("return document.activeElement.matches(arguments[0])", selector));
  }

  private String focused(String property) {
    return browser.text("return document.activeElement[arguments[0]]", property);
  }
}
