package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.BULBS;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Joint;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/** 44 of upright and 35 + 2 of hole are 81; the guide of five plates of 6 stands 30 in front. */
class BitReachTest {

  private static final Pattern REACH = Pattern.compile("shop.bit-reach=(\\d+)");

  /** DIN 338, flute lengths of the jobber series; from memory. */
  @ParameterizedTest
  @CsvSource({"6, 57", "8, 75", "10, 87", "12, 101"})
  void theFlutesOfAMetricBitAreThoseOfDin338(long diameter, long flute) {
    assertEquals(Length.mm(flute), BitReach.jobberFlute(Length.mm(diameter)).orElseThrow());
  }

  /** ASME B94.11M, flute lengths of jobbers drills in 64ths of an inch; from memory. */
  @ParameterizedTest
  @CsvSource({"16, 176", "20, 204", "24, 232", "28, 260", "32, 288"})
  void theFlutesOfAnInchBitAreThoseOfAsmeB94(long diameter, long flute) {
    assertEquals(
        Length.inches(flute, 64), BitReach.jobberFlute(Length.inches(diameter, 64)).orElseThrow());
  }

  @Test
  void aUsualBitThatIsTooShortForTheGuideIsNoted() throws Exception {
    Finding finding = Told.of(ORCHIDS).the("bit-reach");

    assertEquals(Severity.NOTE, finding.severity());
    assertEquals("87 mm", finding.value());
    assertEquals("at least 111 mm", finding.limit());
  }

  @Test
  void aBitOfNoUsualSizeIsAskedFor() throws Exception {
    Finding finding = Told.of(ORCHIDS, "timber.dowel.diameter=9").the("bit-reach");

    assertEquals("", finding.value());
    assertTrue(finding.advice().contains("shop.bit-reach"), finding.advice());
  }

  @Test
  void anInchRackIsToldInInches() throws Exception {
    Finding finding = Told.of(BULBS).the("bit-reach");

    assertEquals("3 5/8\"", finding.value());
    assertTrue(finding.limit().endsWith("\""), finding.limit());
  }

  @Property(tries = 60)
  void aBitEndsInAnErrorAWarningOrANoteAsFarAsItReaches(
      @ForAll @IntRange(min = 40, max = 140) int mm) throws Exception {
    Told told = Told.of(ORCHIDS, "shop.bit-reach=" + mm);
    Joint.Pin pin = told.plan().assembly().joints().get(0).pins().get(0);
    Length joint = pin.uprightHole().depth().plus(pin.railHole().depth());
    long withJig = joint.plus(told.plan().jig().orElseThrow().guideDepth()).nanometres();
    long reach = Length.mm(mm).nanometres();
    Severity expected =
        reach < joint.nanometres()
            ? Severity.ERROR
            : reach < withJig ? Severity.WARNING : Severity.NOTE;

    assertEquals(expected, told.the("bit-reach").severity());
  }

  @ParameterizedTest
  @CsvSource({"60", "80", "95"})
  void aBitOfTheReachAdvisedIsLongEnough(int mm) throws Exception {
    Matcher advised =
        REACH.matcher(Told.of(ORCHIDS, "shop.bit-reach=" + mm).the("bit-reach").advice());
    assertTrue(advised.find());

    Finding after = Told.of(ORCHIDS, "shop.bit-reach=" + advised.group(1)).the("bit-reach");
    assertEquals(Severity.NOTE, after.severity());
  }
}
