package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.api.plan.Finding.Severity.NOTE;
import static org.slatwright.api.plan.Finding.Severity.WARNING;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.PointMass;

/** How racks stand, against statics reckoned here from their weights and sizes. */
class StabilityTest {

  private static final String TRAYS =
      """
      slatwright: 1
      title: Seed-tray rack
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
      rack:
        interior-width: 580
        rail-length: 320
        upright: 1500
        openings: [ 380, { clear: even, count: 2 } ]
      load: { per-shelf: 12 kg }
      """;

  /** Low, broad and heavy: it stands free. */
  private static final String BENCH =
      """
      slatwright: 1
      title: Potting bench
      timber:
        frame: { section: 95 x 95, species: white oak }
        slats: { section: 40 x 140 }
      rack: { interior-width: 1200, rail-length: 700, foot: 60, openings: [ 220 ] }
      slats: { gap-range: 0..400 }
      load: { per-shelf: 40 kg }
      """;

  @Test
  void theWeightStandsHalfTheDepthBehindTheFrontFeet() {
    Standing trays = Standing.of(TRAYS);
    double weight = trays.design().quantities().mass().kg() * 9.80665;

    assertEquals(spelled(weight * 204 / 1500) + " N", trays.finding("tip-forward").value());
    assertEquals("at least 89 N", trays.finding("tip-forward").limit(), "20 lbf of BIFMA X5.9");
    assertEquals(WARNING, trays.severity("tip-forward"));
  }

  @Test
  void sidewaysItTipsOverTheOuterFeet() {
    Standing trays = Standing.of(TRAYS);
    double weight = trays.design().quantities().mass().kg() * 9.80665;

    assertEquals(
        spelled(weight * (580 + 88) / 2 / 1500) + " N", trays.finding("tip-sideways").value());
  }

  /** Loads stand half-way up their opening, and as high on top as in the opening below it. */
  @Test
  void aLoadStandsInTheMiddleOfItsOpening() {
    Standing trays = Standing.of(TRAYS);
    List<PointMass> loads = trays.stance().loads();
    List<Length> undersides = trays.design().rack().railUndersides();
    Length even = trays.design().rack().openings().get(2);

    assertEquals(4, loads.size());
    assertEquals(12, loads.get(0).kg());
    assertEquals(undersides.get(0).inMm() + 44 + 18 + 190, loads.get(0).z(), 1e-9);
    assertEquals(1500 + even.inMm() / 2, loads.get(3).z(), 1e-6, "flush with the uprights");
    assertEquals(334, loads.get(3).x(), 1e-9);
  }

  @Test
  void withoutOpeningsALoadIsAsHighAsTheRackStandsOffTheFloor() {
    Standing stool = Standing.of(BENCH, "rack.openings=[]", "rack.foot=300", "load.per-shelf=10kg");

    assertEquals(300 + 95 + 40 + 150, stool.stance().loads().get(0).z(), 1e-9);
  }

  /** The worst of every set of shelves, tried one by one. */
  @ParameterizedTest
  @ValueSource(strings = {"1 kg", "12 kg", "80 kg"})
  void noSetOfLoadedShelvesLeansLessFarThanTheSlopeSays(String each) {
    Standing trays = Standing.of(TRAYS, "load.per-shelf=" + each);
    PointMass empty = trays.stance().empty();
    double worst = 90;
    for (int set = 0; set < 16; set++) {
      double kg = empty.kg();
      double deep = empty.kg() * empty.y();
      double high = empty.kg() * empty.z();
      for (int shelf = 0; shelf < 4; shelf++) {
        PointMass load = trays.stance().loads().get(shelf);
        double on = (set >> shelf & 1) * load.kg();
        kg += on;
        deep += on * load.y();
        high += on * load.z();
      }
      double behind = Math.min(deep / kg, 408 - deep / kg);
      worst = Math.min(worst, Math.toDegrees(Math.atan(behind / (high / kg))));
    }

    assertEquals(worst, degrees(trays.finding("slope")), 0.05);
  }

  @Test
  void theSlopeSaysHowItIsLoadedWhereItIsWorst() {
    assertEquals(
        "the lean at which it tips forwards or backwards, loaded on the top 2 shelves alone",
        Standing.of(TRAYS).finding("slope").message());
    assertEquals("at least 10°", Standing.of(TRAYS).finding("slope").limit(), "IEC 62368-1");
    assertEquals(WARNING, Standing.of(TRAYS).severity("slope"));
  }

  /** 1500 mm over 320 + 2 x 44 mm: 3.68. */
  @Test
  void slendernessIsTheHeightOfTheTopShelfOverTheDepth() {
    Standing trays = Standing.of(TRAYS);
    assertEquals("3.7", trays.finding("slenderness").value());
    assertEquals(NOTE, trays.severity("slenderness"), "at most 4");

    Standing shelf = Standing.of(TRAYS, "rack.rail-length=200", "slats.per-shelf=2");
    assertEquals("5.2", shelf.finding("slenderness").value());
    assertEquals(WARNING, shelf.severity("slenderness"));
    assertFalse(shelf.finding("slenderness").message().contains("above 6"));

    Standing post = Standing.of(TRAYS, "rack.rail-length=140", "slats.per-shelf=1");
    assertEquals("6.6", post.finding("slenderness").value());
    assertTrue(post.finding("slenderness").message().contains("above 6"), "ANSI MH16.1");
  }

  @Test
  void exactlyFourTimesAsHighAsDeepIsNotTooSlender() {
    Standing four = Standing.of(TRAYS, "rack.rail-length=287", "slats.per-shelf=2");

    assertEquals(NOTE, four.severity("slenderness"), "1500 / 375");
    assertEquals(
        WARNING,
        Standing.of(TRAYS, "rack.rail-length=286", "slats.per-shelf=2").severity("slenderness"));
  }

  @Test
  void slatsThatEndAboveTheFeetCannotBePulledDown() {
    assertTrue(Standing.of(TRAYS).found("shelf-edge-pull").isEmpty());
  }

  @Test
  void aPullOnTheEndOfASlatTurnsOverTheOuterFeet() {
    Standing trays = Standing.of(TRAYS, "slats.overhang=150");
    double weight = trays.design().quantities().mass().kg() * 9.80665;

    assertEquals(spelled(weight * 334 / 150) + " N", trays.finding("shelf-edge-pull").value());
    assertEquals("at least 267 N", trays.finding("shelf-edge-pull").limit(), "60 lb, F2057-23");
  }

  @Test
  void aLowBroadHeavyBenchStandsFree() {
    Standing bench = Standing.of(BENCH);

    assertEquals(List.of(), bench.findings().stream().filter(f -> f.severity() != NOTE).toList());
    assertEquals(NOTE, bench.severity("anchor"), "and is advised to be anchored all the same");
  }

  /** 27 in or more, as ASTM F2057-23 counts. */
  @Test
  void fromTwentySevenInchesUpARackIsAnchored() {
    Standing low = Standing.of(inInches(26.9375));
    Standing tall = Standing.of(inInches(27));

    assertEquals(Length.inches(27, 1), tall.design().assembly().extent().size(Axis.Z));
    assertEquals(NOTE, low.severity("anchor"));
    assertEquals(WARNING, tall.severity("anchor"));
    assertEquals("27\" high", tall.finding("anchor").value());
  }

  @Test
  void aLowRackThatTipsEasilyIsAnchoredToo() {
    Standing light =
        Standing.of(
            BENCH,
            "timber.frame.species=western redcedar",
            "timber.frame.section=34 x 34",
            "timber.slats.section=12 x 60",
            "slats.gap=60");

    assertTrue(light.design().assembly().extent().size(Axis.Z).isLessThan(Length.mm(686)));
    assertEquals(WARNING, light.severity("anchor"));
    String value = light.finding("anchor").value();
    assertTrue(value.matches("\\d+ mm high, but not steady \\((push|lean|slender).*\\)"), value);
    assertTrue(value.contains("push") == light.severity("tip-forward").equals(WARNING), value);
  }

  @Test
  void oneAnchorIsAskedForAtEachFrame() {
    assertTrue(Standing.of(TRAYS).finding("anchor").advice().contains("each of its 2 frames"));
    assertTrue(
        Standing.of(TRAYS, "rack.bays=3").finding("anchor").advice().contains("its 4 frames"));
  }

  @Test
  void asDeepAsAdvisedItIsNoLongerPushedOverForwards() {
    assertFollowed(
        BENCH,
        "tip-forward",
        "timber.frame.species=western redcedar",
        "rack.rail-length=200",
        "slats.per-shelf=1");
  }

  @Test
  void asBroadAsAdvisedItIsNoLongerPushedOverSideways() {
    assertFollowed(
        BENCH,
        "tip-sideways",
        "timber.frame.species=western redcedar",
        "rack.interior-width=300",
        "rack.rail-length=400");
  }

  @Test
  void asDeepAsAdvisedItLeansFarEnoughWhateverStandsOnIt() {
    Finding slope = Standing.of(TRAYS, "slats.gap-range=0..400").finding("slope");
    String change = Advice.changes(slope).get(0).get(0);

    for (String load : List.of("load.per-shelf=1kg", "load.per-shelf=500kg")) {
      assertEquals(
          List.of(), warnings("slope", TRAYS, "slats.gap-range=0..400", change, load), change);
    }
  }

  /**
   * Statics: what stands highest, z, stands z × tan 10° = 0.176327 z behind the edge; each end of
   * the depth of 408 gives half of what is wanted, and 1 mm is to spare.
   */
  @Test
  void theDepthAdvisedIsWhatTheHighestLoadNeeds() {
    Standing trays = Standing.of(TRAYS, "slats.gap-range=0..400");
    double wanted = trays.stance().loads().get(3).z() * 0.176327;
    long rail = (long) Math.ceil(320 + 2 * (wanted - 204 + 1));

    assertEquals("rack.rail-length=" + rail, Advice.changes(trays.finding("slope")).get(0).get(0));
  }

  /** Whichever edge is nearer; a body beyond the feet has no lever. */
  @ParameterizedTest
  @CsvSource({"100, 100", "204, 204", "300, 108", "408, 0", "-5, 0", "450, 0"})
  void aBodyTipsOverTheNearerFeet(double behind, double lever) {
    Stance stance = Standing.of(TRAYS, "slats.overhang=150").stance();
    double front = stance.feet().low().y().inMm();
    double left = stance.feet().low().x().inMm();

    assertEquals(lever, Way.FORWARD.lever(stance, new PointMass(1, 0, front + behind, 9)), 1e-9);
    assertEquals(
        lever, Way.SIDEWAYS.lever(stance, new PointMass(1, left + widened(behind), 0, 9)), 1e-9);
  }

  /** The same place between feet that are 668 mm apart instead of 408. */
  private static double widened(double behind) {
    return behind > 204 ? behind + 668 - 408 : behind;
  }

  /** Statics: F = W · x / e is 60 lbf, 266.9 N, at most; as long as advised, and not 2 mm more. */
  @Test
  void theOverhangAdvisedIsTheLongestThatHoldsTheChild() {
    String[] reaching = {"slats.overhang=150", "rack.interior-width=420"};
    String change =
        Advice.changes(Standing.of(TRAYS, reaching).finding("shelf-edge-pull")).get(0).get(0);
    int advised = Integer.parseInt(change.replace("slats.overhang=", ""));

    assertTrue(pull(advised) >= 60 * 4.4482216, change);
    assertTrue(pull(advised + 2) < 60 * 4.4482216, change);
  }

  private static double pull(int overhang) {
    Standing rack = Standing.of(TRAYS, "rack.interior-width=420", "slats.overhang=" + overhang);
    double weight = rack.design().quantities().mass().kg() * 9.80665;
    return weight * (420 + 88) / 2 / overhang;
  }

  @Test
  void asDeepAsAdvisedItIsNotSlender() {
    assertFollowed(TRAYS, "slenderness", "rack.rail-length=210", "slats.gap-range=0..400");
  }

  @Test
  void withSlatsAsShortAsAdvisedItCannotBePulledOver() {
    assertFollowed(TRAYS, "shelf-edge-pull", "slats.overhang=150", "rack.interior-width=420");
  }

  /** The limits still say what the anchors are there for. */
  @Test
  void ofARackThatIsAnchoredNothingIsLeftToDo() {
    Standing free = Standing.of(TRAYS);
    Standing anchored = Standing.of(TRAYS, "rack.stands=anchored");

    assertTrue(free.finding("anchor").advice().endsWith("then set rack.stands=anchored"));
    assertTrue(anchored.findings().stream().allMatch(finding -> finding.severity() == NOTE));
    assertEquals(free.finding("tip-forward").value(), anchored.finding("tip-forward").value());
    assertEquals("", anchored.finding("tip-forward").advice());
    assertTrue(anchored.finding("anchor").advice().contains("each of its 2 frames"));
  }

  /** Where only another rack would do, nothing is said but to anchor it. */
  @Test
  void noRackIsToldToBeMoreThanTwiceAsDeep() {
    assertEquals("anchor it to the wall", Standing.of(TRAYS).finding("tip-forward").advice());
  }

  /** What the advice asks for clears the finding, and a centimetre less does not. */
  private static void assertFollowed(String yaml, String rule, String... settings) {
    Finding finding = Standing.of(yaml, settings).finding(rule);
    assertEquals(WARNING, finding.severity(), finding.toString());
    String change = Advice.changes(finding).get(0).get(0);

    assertEquals(List.of(), warnings(rule, yaml, with(settings, change)));
    assertEquals(1, warnings(rule, yaml, with(settings, aCentimetreShortOf(change))).size());
  }

  private static List<Finding> warnings(String rule, String yaml, String... settings) {
    return Standing.of(yaml, settings).findings().stream()
        .filter(finding -> finding.rule().equals(rule) && finding.severity() == WARNING)
        .toList();
  }

  private static String aCentimetreShortOf(String setting) {
    int at = setting.indexOf('=') + 1;
    int less = setting.startsWith("slats.overhang") ? -10 : 10;
    return setting.substring(0, at) + (Integer.parseInt(setting.substring(at)) - less);
  }

  private static String[] with(String[] settings, String setting) {
    String key = setting.substring(0, setting.indexOf('=') + 1);
    return Stream.concat(
            Stream.of(settings).filter(each -> !each.startsWith(key)), Stream.of(setting))
        .toArray(String[]::new);
  }

  private static String inInches(double height) {
    return """
        slatwright: 1
        title: Bench
        units: in
        timber:
          frame: { section: 3 1/2 x 3 1/2, species: white oak }
          slats: { section: 1 1/2 x 5 1/2 }
        rack: { interior-width: 60, rail-length: 36, foot: 3, top: flush, upright: %s,
          openings: [ { clear: even } ] }
        load: { per-shelf: 20 lb }
        """
        .formatted(height == 27 ? "27" : "26 15/16");
  }

  private static double degrees(Finding slope) {
    return Double.parseDouble(slope.value().replace("°", ""));
  }

  /** Two digits, as the maker reads them. */
  private static String spelled(double value) {
    return value >= 100
        ? String.format(Locale.ROOT, "%.0f", value)
        : new java.math.BigDecimal(value)
            .round(new java.math.MathContext(2))
            .stripTrailingZeros()
            .toPlainString();
  }

  @Test
  void aPlanInInchesIsToldInPounds() {
    assertEquals("at least 20 lbf", Standing.of(inInches(27)).finding("tip-forward").limit());
  }
}
