package org.slatwright.design.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.sizing.Rack;

class JigUseTest {

  @Test
  void theBitStopIsGuideAndUprightAndHoleInTheRail() {
    assertEquals(
        "Set the stop on the bit to 111 mm from the corners of its cutting edges: 30 mm guide + 44"
            + " mm upright + 37 mm hole in the rail.",
        sentence(Bench.square(44, 10, 6), "Set the stop"));
  }

  @Test
  void aMakerInInchesReadsInches() {
    assertTrue(
        sentence(Bench.square(38.1, 9.525, 6.35).in(Unit.INCH), "Cut ")
            .startsWith("Cut 4 guide plates J1, 2 cheeks J2 and 1 register J3 from 1/4\" sheet"));
  }

  @Test
  void theCautionComesFirst() {
    String first = JigMaker.make(Bench.square(44, 10, 6).rack()).jig().orElseThrow().use().get(0);
    assertEquals(
        "Wear eye protection, clamp frame and jig so that nothing can turn with the bit, keep both"
            + " hands behind the bit, and wear no gloves or loose sleeves at a turning drill.",
        first);
  }

  @Test
  void whatIsToSpareIsExactInEitherUnit() {
    assertEquals(
        "Try it on the uprights: it slides on with 0.4 mm to spare between the cheeks, and the bit"
            + " turns freely in it.",
        sentence(Bench.square(44, 10, 6), "Try it"));
    assertEquals(
        "Try it on the uprights: it slides on with 1/64\" to spare between the cheeks, and the bit"
            + " turns freely in it.",
        sentence(Bench.square(38.1, 9.525, 6.35).in(Unit.INCH), "Try it"));
  }

  @Test
  void oneThickSheetIsOneGuidePlate() {
    assertTrue(sentence(Bench.square(70, 6, 18), "Cut ").startsWith("Cut 1 guide plate J1,"));
  }

  @Test
  void twoDowelsAreDrilledWithoutMovingTheJig() {
    assertTrue(
        sentence(Bench.square(44, 10, 6).withRail(44, 70, 2), "Put a dry dowel")
            .contains("do not move the jig"));
  }

  @Test
  void theLastStepGluesEveryDowelIn() {
    assertTrue(
        sentence(Bench.square(44, 10, 6), "Take the jig off").endsWith("glue the dowel in."));
    assertTrue(
        sentence(Bench.square(44, 10, 6).withRail(44, 70, 2), "Put a dry dowel")
            .endsWith("glue the dowels in."));
  }

  @Test
  void holesInTheMiddleOfTheRailSuitEitherEdgeOfIt() {
    assertTrue(sentence(Bench.square(44, 10, 6), "Put the jig over").contains("over either edge"));
  }

  @Test
  void holesOffTheMiddleSuitTheUpperEdgeOnly() {
    Rack rack = Bench.square(44, 10, 6).rack();
    Saddle middle = Saddle.of(rack);
    Saddle off =
        new Saddle(
            middle.allowances(),
            middle.sheet(),
            middle.guidePlates(),
            middle.web(),
            middle.inside(),
            middle.bottom(),
            middle.top(),
            middle.upperTab(),
            middle.lowerTab(),
            middle.legEnd(),
            middle.registerStart(),
            middle.registerWidth(),
            middle.land(),
            middle.guideDiameter(),
            middle.bush(),
            List.of(Length.mm(20)));
    assertTrue(
        new JigUse(rack, off)
            .steps().stream().anyMatch(step -> step.contains("over the upper edge of the rail")));
  }

  @Test
  void aBushIsPressedIntoTheSeatPlates() {
    Bench bench = Bench.square(44, 10, 6).withBush(15);
    assertTrue(sentence(bench, "Cut").contains("1 guide plate J1, 4 seat plates J4, 2 cheeks"));
    assertTrue(
        sentence(bench, "Push the register")
            .endsWith(
                "Press the bush (15 mm outside, at most 24 mm long) into each seat until it bears"
                    + " on J1."));
  }

  @Test
  void theRailLineIsSeenThroughTheWindow() {
    assertTrue(sentence(Bench.square(44, 10, 6), "Let the glued").contains("Square a pencil line"));
    assertTrue(sentence(Bench.square(44, 10, 6), "Look through the window").contains("holes"));
  }

  /** The guide plates end 37 mm above the register's underside: 6 sheet, 6 web, 25 land. */
  @Test
  void clampsOnTheFrameStayClearOfTheJig() {
    assertTrue(
        sentence(Bench.square(44, 10, 6), "Let the glued frame set")
            .contains("stays 37 mm clear of every rail along the uprights."));
  }

  private static String sentence(Bench bench, String start) {
    return JigMaker.make(bench.rack()).jig().orElseThrow().use().stream()
        .filter(step -> step.startsWith(start))
        .findFirst()
        .orElseThrow();
  }
}
