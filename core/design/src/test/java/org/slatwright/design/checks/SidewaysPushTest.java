package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.checks.Told.ORCHIDS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/**
 * Virtual work: H·h = ΣM over the 24 bearings of a rack 876 mm high. Statics: M = F·(y - a/2), a =
 * F / (f·b), with y = 22 mm to the middle of two fixings, b = 70 mm of slat, and f = 0.9 × 2.2 /
 * 1.3 / 1.5 = 1.0154 MPa of C16 (EN 338; EN 1995-1-1, tables 2.3 and 3.1; EN 1990, table A1.2). F
 * is two times 1.6 / 6 of what draws one out (Wood Handbook, chapter 8): 54.12·0.40^2.5·D·L of a
 * brad, and 108.25·0.40²·D·L of a screw. To hold are 20 lbf, 88.96 N: ANSI/BIFMA X5.9.
 */
class SidewaysPushTest {

  private static final String PINE = "timber.frame.species=ponderosa pine C16";
  private static final String BRACE =
      "fix a diagonal brace or a back panel across two frames at the back and set rack.brace=back,"
          + " or anchor the top of each frame to the wall and set rack.stands=anchored";

  /**
   * Brads 21 mm deep: 138.01 N, so F = 73.6, M = 73.6 × (22 - 0.518) = 1581, H = 43.3. Screws 27 mm
   * deep, F = 249.41·D: of 0.622 mm 155.1, 3243.7 and 88.87; of 0.623 mm 155.4, 3248.5 and 89.00;
   * of 1 mm 5049 and 138.
   */
  @ParameterizedTest
  @CsvSource({
    "brad, 39, 1.2, 43 N, at least 89 N, WARNING",
    "screw, 45, 0.622, 88.9 N, at least 89 N, WARNING",
    "screw, 45, 0.623, 89 N, at least 88.96 N, NOTE",
    "screw, 45, 1, 138 N, at least 89 N, NOTE"
  })
  void thePushIsHeldByAllBearings(
      String kind, String length, String diameter, String value, String limit, Severity severity)
      throws Exception {
    Finding finding = push(kind, length, diameter);

    assertEquals("rack", finding.subject());
    assertEquals(
        "push along the slats at the top that their fixing holds, with no brace",
        finding.message());
    assertEquals(value, finding.value());
    assertEquals(limit, finding.limit());
    assertEquals(severity, finding.severity());
    assertEquals(severity == Severity.WARNING, finding.advice().startsWith(BRACE));
    assertEquals(severity == Severity.NOTE, finding.advice().isEmpty());
  }

  /** Where the edge crushes first, f·b·y²/2 = 17 200 N·mm is all: 24 × 17 200 / 876 = 471 N. */
  @Test
  void aVeryStrongScrewHoldsNoMoreThanTheEdgeBears() throws Exception {
    double most = 0.9 * 2.2 / 1.3 / 1.5 * 70 * 22 * 22 / 2;

    assertEquals(Math.round(24 * most / 876) + " N", push("screw", "60", "6").value());
  }

  /**
   * Where slats of two bays meet on a rail, each touches 22 mm of it, and opens about one edge with
   * the reach y, about the other with 22 - y. The slats of both bays mirror each other: F·(22 - a)
   * for two bearings. Of 48, 24 lie on outer rails, 1581 each (above), and 12 pairs on inner ones:
   * 73.6 × (22 - 1.036) = 1543. (24 × 1581 + 12 × 1543) / 876 = 64.5 N.
   */
  @Test
  void slatsThatMeetOnARailHoldLessThere() throws Exception {
    Finding finding =
        Designs.finding(
            "sideways-push",
            ORCHIDS,
            PINE,
            "joint.fixing={kind: brad, length: 39, diameter: 1.2}",
            "rack.bays=2",
            "slats.run=per-bay");

    assertEquals("64 N", finding.value());
  }

  /** What lies beyond the rail does not touch it. */
  @Test
  void anOverhangHoldsNoMore() throws Exception {
    assertEquals("43 N", push("brad", "39", "1.2", "slats.overhang=100").value());
  }

  @ParameterizedTest
  @CsvSource({
    "rack.brace=back, 'alone would hold, were it not braced at the back; the brace is yours to add,"
        + " and is not drawn'",
    "rack.stands=anchored, 'alone would hold, were it not anchored'"
  })
  void whatHoldsTheRackIsNamed(String held, String words) throws Exception {
    Finding finding = push("brad", "39", "1.2", held);

    assertEquals("push along the slats at the top that their fixing " + words, finding.message());
    assertEquals("43 N", finding.value());
    assertEquals("at least 89 N", finding.limit());
    assertEquals(Severity.NOTE, finding.severity());
    assertEquals("", finding.advice());
  }

  private static Finding push(String kind, String length, String diameter, String... more)
      throws Exception {
    String fixing =
        "joint.fixing={kind: %s, length: %s, diameter: %s}".formatted(kind, length, diameter);
    return more.length == 0
        ? Designs.finding("sideways-push", ORCHIDS, PINE, fixing)
        : Designs.finding("sideways-push", ORCHIDS, PINE, fixing, more[0]);
  }
}
