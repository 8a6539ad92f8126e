package org.slatwright.design.steps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.steps.Built.BROMELIADS;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.plan.Step;

/** Orders of work and waiting times are common practice, no source, unless one is named. */
class BuildOrderTest {

  @Test
  void aRackIsBuiltInTheOrderOfTheTrade() {
    Built built = Built.of(BROMELIADS);

    List<String> order =
        List.of(
            "sort-timber",
            "cut-frame-stock",
            "lay-out-uprights",
            "dry-frame-1",
            "glue-frame-1",
            "unclamp-frame-1",
            "drill-frame-1",
            "dowel-frame-1",
            "flush-frame-1",
            "stand-frames",
            "bottom-shelf",
            "top-shelf",
            "shelves-between",
            "set-in-place",
            "load");

    assertEquals(order, built.ids().stream().filter(order::contains).toList());
  }

  /** Frame depth 50 + 800 + 50 = 900 and upright 1200: the triangle of 3, 4 and 5 (Euclid I.47). */
  @Test
  void squareIsWhereBothDiagonalsAreWhatPythagorasSays() {
    Built built = Built.of(BROMELIADS);

    assertTrue(built.said("dry-frame-1").contains("are 1500 mm;"), built.said("dry-frame-1"));
    assertTrue(built.said("unclamp-frame-2").contains("still 1500 mm,"));
  }

  /** Over both frames 600 + 2 × 50 = 700: √(700² + 1200²) = 1389.24. */
  @Test
  void theBackIsSquaredWithItsDiagonalsBeforeTheLastFixings() {
    assertTrue(Built.of(BROMELIADS).said("top-shelf").contains("both diagonals are 1389 mm"));
  }

  /** 24 h without load: labels of PVA glues, from memory. */
  @Test
  void noFrameIsDrilledWithinADayOfGluing() {
    Built built = Built.of(BROMELIADS);

    int clamped = built.step("glue-frame-1").then().orElseThrow().time().count();
    int laid = built.step("unclamp-frame-1").then().orElseThrow().time().count();

    assertEquals(Minutes.hours(24), new Minutes(clamped + laid));
    assertTrue(
        built.step("drill-frame-1").after().contains(built.step("unclamp-frame-1").number()));
  }

  @Test
  void theSecondFrameIsSetAgainstTheFirstWhileThatCures() {
    Built built = Built.of(BROMELIADS);

    assertTrue(built.said("dry-frame-2").contains("Lay frame 1 under it"));
    assertFalse(built.said("dry-frame-1").contains("under it"));
    assertTrue(built.isBefore("glue-frame-2", "drill-frame-1"));
  }

  @Test
  void theJigIsMadeWhileGlueCures() {
    Built built = Built.of(BROMELIADS);

    assertTrue(built.isBefore("glue-frame-1", "make-jig"));
    assertTrue(built.isBefore("make-jig", "drill-frame-1"));
  }

  /** Guide, upright and rail: what the stop on the bit is set to is what the bit goes into. */
  @Test
  void theStopOnTheBitIsSetToAllThatItGoesThrough() {
    Built built = Built.of(BROMELIADS);
    String said = built.said("drill-frame-1");

    int guide = number(said, "(\\d+) mm guide");
    int upright = number(said, "(\\d+) mm upright");
    int rail = number(said, "(\\d+) mm in the rail");

    assertEquals(50, upright);
    assertEquals(number(said, "bit to (\\d+) mm"), guide + upright + rail);
    assertEquals(number(said, "rule goes (\\d+) mm"), upright + rail);
  }

  private static int number(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertTrue(found.find(), text);
    return Integer.parseInt(found.group(1));
  }

  @Test
  void everyBayHasItsFrame() {
    Built built = Built.of(BROMELIADS, "rack.bays=3", "slats.run=per-bay");

    assertTrue(built.isBefore("glue-frame-3", "glue-frame-4"));
    assertTrue(built.said("bottom-shelf").contains("bay by bay"));
  }

  @Test
  void withoutFootClearanceTheLowestRailsEndWithTheUprights() {
    Built built = Built.of(BROMELIADS, "rack.foot=0", "rack.openings=[400, {clear: even}]");

    assertTrue(built.said("lay-out-uprights").contains("level with the floor ends"));
    assertFalse(built.said("dry-frame-1").contains("block"));
  }

  @Test
  void whereTheTopIsOpenTheUpperSpacersStayBelowIt() {
    assertTrue(Built.of(BROMELIADS).said("stand-frames").contains("run on 30 mm above"));
    String flush = Built.of(BROMELIADS, "rack.top=flush").said("stand-frames");
    assertFalse(flush.contains("run on"), flush);
  }

  @Test
  void reclaimedBoardsAreClearedOfMetalBeforeASawMeetsThem() {
    Built built =
        Built.of(
            BROMELIADS,
            "timber.slats={boards: [{length: 2 m, width: 90, thickness: 20, count: 40}]}",
            "slats={gap-range: 5..30}");

    assertTrue(built.isBefore("clear-boards", "cut-slat-stock"));
    assertTrue(built.step("cut-slat-stock").after().contains(built.step("clear-boards").number()));
    assertTrue(built.said("bottom-shelf").contains("from the front back:"));
    assertFalse(Built.of(BROMELIADS).ids().contains("clear-boards"));
  }

  @Test
  void finishGoesOnFirstWhereNoBrushReachesBetweenTheSlats() {
    Built close = Built.of(BROMELIADS);
    Built wide = Built.of(BROMELIADS, "slats={per-shelf: 5, gap: 100}");

    assertTrue(close.isBefore("coat-parts", "stand-frames"));
    assertTrue(wide.isBefore("shelves-between", "coat-rack"));
    assertTrue(wide.isBefore("coat-rack", "set-in-place"));
  }

  @Test
  void manyRailsAreGluedInTwoGoes() {
    String tall =
        "rack={interior-width: 600, rail-length: 800, openings: [{clear: 150, count: 9}]}";
    Built built = Built.of(BROMELIADS, tall);

    assertTrue(built.isBefore("glue-front-frame-1", "glue-frame-1"));
    assertFalse(Built.of(BROMELIADS).ids().contains("glue-front-frame-1"));
  }

  @Test
  void oneShelfIsTheBottomShelfAlone() {
    Built built =
        Built.of(
            BROMELIADS, "rack={interior-width: 600, rail-length: 800, upright: 500, openings: []}");

    assertFalse(built.ids().contains("top-shelf"));
    assertTrue(built.isBefore("bottom-shelf", "set-in-place"));
  }

  @Test
  void aRackThatIsToBeAnchoredIs() {
    assertEquals(
        "Anchor the rack in its place",
        Built.of(BROMELIADS, "rack.stands=anchored").step("set-in-place").title());
    Built braced = Built.of(BROMELIADS, "rack.brace=back");
    assertTrue(braced.isBefore("brace", "set-in-place"));
  }

  @Test
  void withoutAJigTheTemplateShowsWhereToDrill() {
    Built built =
        Built.of(
            BROMELIADS,
            "timber.frame={section: 20 x 50}",
            "timber.dowel={diameter: 14}",
            "shop.jig-sheet=2");

    assertFalse(built.ids().contains("make-jig"));
    assertTrue(built.said("drill-frame-1").contains("template"));
  }

  @Test
  void everyStepOfWorkThatCanHurtSaysSo() {
    for (Step step : Built.of(BROMELIADS, "rack.stands=anchored").steps()) {
      boolean hurts =
          step.tools().stream().anyMatch(tool -> tool.matches("saw|drill|.*router.*|.*hammer.*"));
      assertTrue(!hurts || !step.caution().isBlank(), step::title);
    }
  }
}
