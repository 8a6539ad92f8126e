package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.BULBS;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.wood.Climate;

class SlatGapsTest {

  /**
   * Wood Handbook, chapter 13, with C_T 0.00216 of ponderosa pine (table 13-5), so S 6.2: 89 x 2.5
   * / (3000 / 6.2 - 30 + 9.5) = 0.48 mm from 9.5 to 12 %; the slat at the front upright moves by
   * half of it: 2 - 0.48 - 0.24 = 1.28.
   */
  @Test
  void slatsSwellByWhatTheHandbookGives() throws Exception {
    Finding found =
        Told.of(
                ORCHIDS,
                "timber.frame.species=ponderosa pine",
                "timber.slats.section=18 x 89",
                "slats.per-shelf=3",
                "slats.gap=2",
                "rack.rail-length=271")
            .the("slat-gaps");

    assertEquals(Severity.NOTE, found.severity());
    assertEquals("1.3 mm", found.value());
    assertEquals("more than 0", found.limit());
  }

  /**
   * As above: 0.480 of 89 mm, half of it 0.240. Between margins of 0 and 1 only the front slat is
   * pushed, between none both, of two slats into the same gap; with 1 in front neither is.
   */
  @ParameterizedTest
  @CsvSource({"3, 271, 1.3", "3, 272, 1.3", "3, 273, 1.5", "2, 180, 1", "2, 182, 1.5"})
  void anEndSlatIsPushedByTheUprightAsFarAsItsMarginIsTooNarrow(int slats, int rail, String left)
      throws Exception {
    assertEquals(
        left + " mm",
        Told.of(
                ORCHIDS,
                "timber.frame.species=ponderosa pine",
                "timber.slats.section=18 x 89",
                "slats={per-shelf: " + slats + ", gap: 2}",
                "rack.rail-length=" + rail)
            .the("slat-gaps")
            .value());
  }

  /** 200 x 2.5 / (3000 / 6.2 - 30 + 9.5) = 1.08 of the 3 mm, or of none. */
  @ParameterizedTest
  @CsvSource({"203, NOTE, 1.9 mm", "200, WARNING, none: they press by 1.1 mm"})
  void aSingleSlatHasTheRoomToBothUprights(int rail, Severity severity, String left)
      throws Exception {
    Finding found =
        Told.of(
                ORCHIDS,
                "timber.frame.species=ponderosa pine",
                "timber.slats.section=18 x 200",
                "slats={per-shelf: 1}",
                "rack.rail-length=" + rail)
            .the("slat-gaps");

    assertEquals(left, found.value());
    assertEquals(severity, found.severity());
  }

  @ParameterizedTest
  @CsvSource({"0, indoors", "0.5, indoors", "1, outdoors", "1.5, outdoors", "0, covered"})
  void theGapAdvisedStaysOpen(String gap, String climate) throws Exception {
    assertAdviceHelps(ORCHIDS, "slats.gap=" + gap, "load.climate=" + climate);
  }

  @Test
  void theGapAdvisedStaysOpenOnAFullRailAndInInches() throws Exception {
    assertAdviceHelps(
        ORCHIDS, "slats.gap=0", "slats.per-shelf=4", "rack.rail-length=280", "increment=5");
    assertAdviceHelps(BULBS, "slats.gap=0", "rack.rail-length=10", "load.climate=outdoors");
  }

  @Test
  void theGapAdvisedKeepsToTheRangeThatIsGivenOrSaysBoth() throws Exception {
    String[] within = {"slats.gap=1", "slats.gap-range=1..12", "load.climate=outdoors"};
    String[] wider = {"slats.gap=1", "slats.gap-range=1..2", "load.climate=outdoors"};
    assertAdviceHelps(ORCHIDS, within);
    assertAdviceHelps(ORCHIDS, wider);

    assertFalse(Told.of(ORCHIDS, within).the("slat-gaps").advice().contains("gap-range"));
    String both = Told.of(ORCHIDS, wider).the("slat-gaps").advice();
    assertTrue(both.matches("set slats.gap=(\\d+) with slats.gap-range=1\\.\\.\\1 .*"), both);
  }

  @Test
  void aSingleSlatNeedsRoomToTheUprights() throws Exception {
    String[] tight = {
      "timber.slats.section=18 x 200", "slats={per-shelf: 1}", "rack.rail-length=200"
    };
    Finding found = Told.of(ORCHIDS, tight).the("slat-gaps");
    assertEquals(Severity.WARNING, found.severity());

    tight[2] = Advice.changes(found).get(0).get(0);

    assertEquals(Severity.NOTE, Told.of(ORCHIDS, tight).the("slat-gaps").severity());
  }

  /** Longer rails would not help: the board would be ripped wider. C_T of norway spruce, 0.0025. */
  @Test
  void aReclaimedBoardAloneIsToBeRippedNarrower() throws Exception {
    Finding found =
        Told.of(
                ORCHIDS,
                "timber.slats={ boards: [ { length: 2 m, width: 240, thickness: 18, count: 9 } ] }",
                "slats={ per-shelf: 1 }",
                "rack.rail-length=200")
            .the("slat-gaps");
    assertEquals(Severity.WARNING, found.severity());

    assertEquals("rip the slat no wider than 198 mm, so that it has room to swell", found.advice());
  }

  @Property(tries = 30)
  void aWiderSlatNeverLeavesAWiderGap(
      @ForAll @IntRange(min = 40, max = 119) int width,
      @ForAll @IntRange(min = 1, max = 40) int wider,
      @ForAll Climate climate)
      throws Exception {
    assertTrue(left(width + wider, climate) <= left(width, climate));
  }

  /** The same rack in both units: 2 1/2 in is 63.5 mm. */
  @Test
  void unitsChangeNothing() throws Exception {
    Finding metric =
        Told.of(
                BULBS,
                "units=mm",
                "timber.frame.section=38.1 x 38.1",
                "timber.slats.section=19.05 x 63.5",
                "timber.dowel.diameter=9.525",
                "rack.interior-width=609.6",
                "rack.rail-length=273.05",
                "rack.foot=101.6",
                "rack.openings=[254, 254]",
                "rack.top=25.4",
                "slats.gap=6.35")
            .the("slat-gaps");
    Finding inch = Told.of(BULBS, "slats.gap=1/4", "rack.rail-length=10 3/4").the("slat-gaps");

    assertEquals(metric.severity(), inch.severity());
    assertEquals(number(metric.value()), number(inch.value()) * 25.4, 0.13);
  }

  private static double left(int width, Climate climate) throws Exception {
    int rail = 4 * width + 3 * 8;
    String value =
        Told.of(
                ORCHIDS,
                "timber.slats.section=18 x " + width,
                "slats.gap=8",
                "rack.rail-length=" + rail,
                "load.climate=" + climate.word())
            .the("slat-gaps")
            .value();
    return number(value);
  }

  private static double number(String value) {
    return Double.parseDouble(value.replace(" mm", "").replace("\"", ""));
  }

  private static void assertAdviceHelps(String yaml, String... settings) throws Exception {
    Finding before = Told.of(yaml, settings).the("slat-gaps");
    assertEquals(Severity.WARNING, before.severity(), before.toString());
    List<List<String>> changes = Advice.changes(before);
    assertEquals(1, changes.size(), before.advice());
    String[] followed = Advice.joined(List.of(settings), changes.get(0)).toArray(String[]::new);

    Finding after = Told.of(yaml, followed).the("slat-gaps");

    assertEquals(Severity.NOTE, after.severity(), after.toString());
  }
}
