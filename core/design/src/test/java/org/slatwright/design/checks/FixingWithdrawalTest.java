package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.checks.Told.BULBS;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/**
 * Wood Handbook (FPL-GTR-282), chapter 8: a brad of 1.2 mm that is 21 mm deep in ponderosa pine, G
 * 0.40, is drawn out at 54.12 × 0.40^2.5 × 1.2 × 21 = 138.01 N, a screw at 108.25 × 0.40² × D × L.
 * A sixth of it is used, 1.6 times as much for a moment (NDS, table 2.3.2, from memory).
 */
class FixingWithdrawalTest {

  private static final String PINE = "timber.frame.species=ponderosa pine";
  private static final double STANDARD_GRAVITY = 9.80665;

  /**
   * At most w × 1.6 / 6. Brads: 138.01 gives 36.8. Screws of 4 mm, 17.32 × 4 × L: 27 deep gives
   * 1870.6 and 499; of 60 mm 42 are in the rail and two thirds, 40, threaded: 2771.2 and 739.
   */
  @ParameterizedTest
  @CsvSource({
    "brad, 39, 1.2, at most 37 N",
    "screw, 45, 4, at most 499 N",
    "screw, 60, 4, at most 739 N"
  })
  void aLiftedRackPullsAtEachFixing(String kind, String length, String diameter, String limit)
      throws Exception {
    String fixing =
        "joint.fixing={kind: %s, length: %s, diameter: %s}".formatted(kind, length, diameter);
    double eight = Designs.of(ORCHIDS, PINE).quantities().mass().kg() * STANDARD_GRAVITY / 8;
    Finding finding = lifting(ORCHIDS, PINE, fixing);

    assertEquals(Severity.NOTE, finding.severity());
    assertEquals(kind + "s when lifted", finding.subject());
    assertEquals(
        "pull on each when the empty rack is lifted by two slats of the top shelf",
        finding.message());
    assertEquals(Math.round(eight) + " N", finding.value());
    assertEquals(limit, finding.limit());
    assertEquals("", finding.advice());
  }

  /**
   * One brad of 1.2 mm at each of four bearings: 6.572 N a mm of depth, of which 1.6 / 6 is used,
   * 1.7525. The rack is reckoned to weigh what its quantities say.
   */
  @ParameterizedTest
  @CsvSource({"-0.2, ERROR, 1", "0.2, WARNING, 1", "-0.2, WARNING, 1.6", "0.2, NOTE, 1.6"})
  void aPullJustOverTheLimitIsWarnedOf(double beside, Severity severity, double share)
      throws Exception {
    double pull = Designs.of(ORCHIDS, PINE).quantities().mass().kg() * STANDARD_GRAVITY / 4;
    double perMm = 54.12 * 0.4 * 0.4 * Math.sqrt(0.4) * 1.2;
    double most = share == 1 ? perMm : perMm * 1.6 / 6;
    long tenths = Math.round((pull / most + beside + 18) * 10);
    String length = tenths / 10 + "." + tenths % 10;
    Finding finding =
        lifting(
            ORCHIDS,
            PINE,
            "joint.fixing={kind: brad, length: " + length + ", diameter: 1.2, per-end: 1}");

    assertEquals(severity, finding.severity(), length + " " + finding);
    assertEquals(severity == Severity.NOTE, finding.advice().isEmpty(), finding.advice());
  }

  /** A shelf of one slat is lifted by that one, and through slats rest on every frame. */
  @ParameterizedTest
  @CsvSource({
    "1, 1, through, 1, 2",
    "2, 1, through, 1, 4",
    "4, 1, through, 1, 4",
    "4, 2, through, 1, 6",
    "4, 2, through, 3, 18",
    "4, 2, per-bay, 1, 8",
    "4, 1, per-bay, 1, 4",
    "4, 1, through, 3, 12"
  })
  void theLiftIsSharedByAllBearingsOfTwoSlats(
      int slats, int bays, String run, int perEnd, int fixings) throws Exception {
    String[] settings = {
      PINE,
      "slats={per-shelf: " + slats + ", run: " + run + "}",
      "rack.bays=" + bays,
      "joint.fixing={kind: brad, length: 39, diameter: 1.2, per-end: " + perEnd + "}"
    };
    Design design = Designs.of(ORCHIDS, settings);
    double each = design.quantities().mass().kg() * STANDARD_GRAVITY / fixings;

    assertEquals(
        new Figures(design.rack().lengths()).force(each), lifting(ORCHIDS, settings).value());
  }

  /** One slat of 275 lies on the lower shelf, two of 140 on the top: 2 × 2 bearings × 2 brads. */
  @Test
  void theTopShelfIsLiftedByAsManySlatsAsItHas() throws Exception {
    String[] settings = {
      PINE,
      "timber.slats={boards: [{length: 720, width: 275, thickness: 18},"
          + " {length: 720, width: 140, thickness: 18, count: 2}]}",
      "rack.openings=[300]",
      "rack.rail-length=310",
      "slats={}"
    };
    Design design = Designs.of(ORCHIDS, settings);
    double each = design.quantities().mass().kg() * STANDARD_GRAVITY / 8;

    assertEquals(
        List.of(1, 2), design.rack().rows().stream().map(row -> row.slats().size()).toList());
    assertEquals(
        new Figures(design.rack().lengths()).force(each), lifting(ORCHIDS, settings).value());
  }

  /**
   * 300 kg a shelf, on the ends of two slats, 1471 N each, half of a reach a, over a span of 644,
   * on two brads: 0.5710 N a mm of a. At most 138.01 / 6 = 23.0, so 40.28 mm; drawn out at 241.7
   * mm.
   */
  @ParameterizedTest
  @CsvSource({
    "40, 22.8 N, NOTE",
    "41, 23.4 N, WARNING",
    "241, 138 N, WARNING",
    "242, 138 N, ERROR"
  })
  void aThingOnSlatEndsPrisesTheNextBearing(String overhang, String value, Severity severity)
      throws Exception {
    Finding finding = prising("slats.overhang=" + overhang, "load.per-shelf=300kg");

    assertEquals("slat ends", finding.subject());
    assertEquals(
        "pull on each of the brads at the next bearing with 300 kg as one thing on two slat ends",
        finding.message());
    assertEquals(severity, finding.severity());
    assertEquals(
        severity == Severity.NOTE ? List.of() : List.of("slats.overhang=40"),
        Advice.changes(finding).stream().flatMap(List::stream).limit(1).toList());
    assertEquals(value, finding.value());
    assertEquals("at most 23 N", finding.limit());
  }

  /** 23.0 N at 300 mm of overhang: 40.28 kg. */
  @ParameterizedTest
  @CsvSource({"40.2kg, NOTE", "40.4kg, WARNING"})
  void lessLoadPrisesLess(String load, Severity severity) throws Exception {
    assertEquals(severity, prising("slats.overhang=300", "load.per-shelf=" + load).severity());
  }

  /** In pounds-force: one pound is 4.448 N. */
  @ParameterizedTest
  @CsvSource({"1, 2", "2, 4"})
  void inchesAreReckonedAlike(int slats, int times) throws Exception {
    String[] settings = {
      "slats={per-shelf: " + slats + "}", "joint.fixing={length: 2, diameter: 3/64, per-end: 1}"
    };
    double newtons =
        Designs.of(BULBS, settings).quantities().mass().kg() * STANDARD_GRAVITY / times;

    assertEquals(tenths(newtons / 4.4482216), tenths(pounds(lifting(BULBS, settings))), 5);
  }

  private static long tenths(double number) {
    return Math.round(number * 10);
  }

  private static double pounds(Finding finding) {
    return Double.parseDouble(finding.value().replace(" lbf", ""));
  }

  private static Finding lifting(String yaml, String... settings) throws Exception {
    return Designs.findings("fixing-withdrawal", yaml, settings).get(0);
  }

  private static Finding prising(String... settings) throws Exception {
    String[] all = {PINE, "joint.fixing={length: 39, diameter: 1.2}", settings[0], settings[1]};
    return Designs.findings("fixing-withdrawal", ORCHIDS, all).get(1);
  }
}
