package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/** The unit, and light or dark. */
class ChoicesTest extends AtTheBench {

  private static final String GROUND = "return getComputedStyle(document.body).backgroundColor";
  private static final String LINE =
      "return getComputedStyle(document.querySelector('.line-visible')).stroke";

  @Test
  void everyLengthIsShownAsTheApiSpellsItInTheUnitChosen() {
    for (Unit unit : List.of(Unit.MM, Unit.INCH, Unit.MM, Unit.INCH)) {
      browser.touch(".units input[value=" + unit.symbol() + "]");
      assertCutList(unit);
      for (Step step : PLAN.work().steps()) {
        assertStep(step, new LengthFormat(unit));
      }
    }
    browser.reload();
    assertEquals("in", unit(), "remembered");
    assertTrue(browser.one(".units input[value=in]").isSelected());
  }

  private void assertCutList(Unit unit) {
    String heads = browser.one("#cut-list thead").getText();
    assertTrue(heads.contains("Length, " + unit.symbol()), heads);
    LengthFormat format = new LengthFormat(unit);
    List<WebElement> rows = browser.all("#cut-list tbody tr:not(.below)");
    for (int i = 0; i < rows.size(); i++) {
      CutLine line = PLAN.cutList().get(i);
      assertEquals(
          format.number(line.part().shape().length()),
          rows.get(i).findElement(By.tagName("data")).getText());
    }
  }

  private void assertStep(Step step, LengthFormat format) {
    String said = browser.one("#step-" + step.number()).getText();
    for (Wording doing : step.doing()) {
      assertTrue(said.contains(doing.in(format)), said);
    }
    assertTrue(said.contains(step.check().in(format)), said);
  }

  @Test
  void lightAndDarkFollowTheDeviceUntilTheMakerChooses() {
    String light = browser.text(GROUND);
    String lightLine = browser.text(LINE);
    browser.wish("dark");
    String dark = browser.text(GROUND);
    assertNotEquals(light, dark);
    assertNotEquals(lightLine, browser.text(LINE), "drawings turn too");
    assertEquals("true", browser.one("[data-dark]").getDomAttribute("aria-pressed"));
    browser.touch("[data-dark]");
    assertEquals(light, browser.text(GROUND));
    browser.reload();
    assertEquals(light, browser.text(GROUND), "remembered");
    browser.wish("light");
    browser.touch("[data-dark]");
    assertEquals(dark, browser.text(GROUND));
  }
}
