package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.BULBS;
import static org.slatwright.design.checks.Told.ORCHIDS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/**
 * To an end 10 diameters in light wood, 15 in heavy, to an edge 5 and 7, with no hole: EN 1995-1-1,
 * table 8.2 (from memory); 3 and 1 1/2 in a pilot hole of 0.75, in hardwood 0.9 of the shank:
 * common practice, no source. Characteristic densities of EN 338: C16 310, D24 485, D30 530 kg/m³.
 */
class FixingSplittingTest {

  private static final String NEAREST = "middle of the shank to the nearest %s of a %s,%s";
  private static final String WHY = " so that the wood does not split";

  /** 14 mm from the end of a slat: 14 / 10 = 1.4; 14 / 15 = 0.933. */
  @ParameterizedTest
  @CsvSource({
    "norway spruce C16, 1.4, at least 14 mm, ",
    "norway spruce C16, 1.41, at least 4.2 mm in a pilot hole, 1.1 mm",
    "white oak D24, 0.93, at least 13.95 mm, ",
    "white oak D24, 0.94, at least 2.8 mm in a pilot hole, 0.8 mm",
    "white oak D30, 0.6, at least 1.8 mm in a pilot hole, 0.5 mm"
  })
  void aBradNearTheEndOfASlatIsDrilledFor(
      String species, String diameter, String limit, String hole) throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            ORCHIDS,
            "timber.frame.species=" + species,
            "joint.fixing={kind: brad, length: 45, diameter: " + diameter + "}");

    assertEquals(Severity.NOTE, finding.severity());
    assertEquals("brads", finding.subject());
    assertEquals(NEAREST.formatted("end", "slat", WHY), finding.message());
    assertEquals("14 mm", finding.value());
    assertEquals(limit, finding.limit());
    assertEquals(
        hole == null ? "" : "drill pilot holes of " + hole + " through the slats",
        finding.advice());
  }

  /** A quarter of 70 mm from the end of a rail, 17.5: 17.5 / 10 = 1.75; 17.5 / 3 = 5.833. */
  @ParameterizedTest
  @CsvSource({
    "brad, 1.75, 18 mm, at least 18 mm, NOTE",
    "brad, 1.76, 18 mm, at least 5.3 mm in a pilot hole, NOTE",
    "screw, 1.75, 18 mm, at least 5.3 mm in a pilot hole, NOTE",
    "screw, 5.83, 18 mm, at least 17 mm in a pilot hole, NOTE",
    "screw, 5.84, 17.5 mm, at least 17.52 mm in a pilot hole, WARNING"
  })
  void theEndOfARailCountsWhereSlatsReachOut(
      String kind, String diameter, String value, String limit, Severity severity)
      throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            ORCHIDS,
            "timber.frame.species=norway spruce C16",
            "slats.overhang=100",
            "joint.fixing={kind: " + kind + ", length: 45, diameter: " + diameter + "}");

    assertEquals(NEAREST.formatted("end", "rail", WHY), finding.message());
    assertEquals(value, finding.value());
    assertEquals(limit, finding.limit());
    assertEquals(severity, finding.severity());
  }

  /** A quarter of 24 mm from an edge, 6: 6 / 5 = 1.2; 6 / 7 = 0.857; 6 / 1.5 = 4. */
  @ParameterizedTest
  @CsvSource({
    "norway spruce C16, brad, 1.2, 6 mm, at least 6 mm, NOTE",
    "norway spruce C16, brad, 1.21, 6 mm, at least 1.8 mm in a pilot hole, NOTE",
    "white oak D24, brad, 0.84, 6 mm, at least 5.9 mm, NOTE",
    "white oak D24, brad, 0.86, 6 mm, at least 1.3 mm in a pilot hole, NOTE",
    "norway spruce C16, screw, 4, 6 mm, at least 6 mm in a pilot hole, NOTE",
    "norway spruce C16, screw, 4.1, 6 mm, at least 6.2 mm in a pilot hole, WARNING"
  })
  void theEdgeOfANarrowSlatCounts(
      String species, String kind, String diameter, String value, String limit, Severity severity)
      throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            ORCHIDS,
            "timber.frame.species=" + species,
            "timber.slats.section=18 x 24",
            "joint.fixing={kind: " + kind + ", length: 45, diameter: " + diameter + "}");

    assertEquals(NEAREST.formatted("edge", "slat", WHY), finding.message());
    assertEquals(value, finding.value());
    assertEquals(limit, finding.limit());
    assertEquals(severity, finding.severity());
  }

  /** 7/16 from the end of a slat: ten times 1/32 is 5/16, ten times 3/64 is 15/32. */
  @ParameterizedTest
  @CsvSource({
    "1/32, at least 5/16\", ",
    "3/64, at least 1/8\" in a pilot hole, 1/32\"",
    "1/16, at least 3/16\" in a pilot hole, 3/64\""
  })
  void inchesAreReckonedAlike(String diameter, String limit, String hole) throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            BULBS,
            "timber.frame.species=douglas-fir C16",
            "joint.fixing={kind: brad, length: 2, diameter: " + diameter + "}");

    assertEquals("7/16\"", finding.value());
    assertEquals(limit, finding.limit());
    assertEquals(
        hole == null ? "" : "drill pilot holes of " + hole + " through the slats",
        finding.advice());
  }

  /** Three times 9/64 is 27/64, as far as there is. */
  @Test
  void aLimitThatIsJustMetIsToldAsTheSame() throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting", BULBS, "joint.fixing={kind: screw, length: 1 3/4, diameter: 9/64}");

    assertEquals(Severity.NOTE, finding.severity());
    assertEquals("at least " + finding.value() + " in a pilot hole", finding.limit());
  }

  @Test
  void aScrewTooThickIsAdvisedThinner() throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting", BULBS, "joint.fixing={kind: screw, length: 1 3/4, diameter: 3/16}");

    assertEquals(Severity.WARNING, finding.severity());
    assertEquals("at least 9/16\" in a pilot hole", finding.limit());
    assertEquals("set joint.fixing.length=1-3/4 and joint.fixing.diameter=9/64", finding.advice());
    assertFalse(finding.advice().contains("drill"));
    assertTrue(finding.source().contains("table 8.2"));
  }
}
