package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What a setting takes the place of is what really stands in the file. */
class ChangesTest {

  private static final String RACK =
      """
      slatwright: 1
      timber:
        frame: { section: 44 x 44 }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 580
        rail-length: 320
        upright: 1500
        openings:
          - 380
          - clear: even
            count: 2
      title: Seed trays
      """;

  @Test
  void theLineWithTheKeyIsShown() {
    assertEquals(
        "rack.upright=1400 instead of trays.yaml:9: upright: 1500",
        note(RACK, "rack.upright=1400"));
    assertEquals(
        "timber.frame.section=45 x 45 instead of trays.yaml:3: frame: { section: 44 x 44 }",
        note(RACK, "timber.frame.section=45 x 45"));
  }

  @Test
  void aKeyInQuotesIsOneAsWell() {
    assertEquals(
        "rack.upright=1400 instead of trays.yaml:9: \"upright\": 1500",
        note(RACK.replace("upright:", "\"upright\":"), "rack.upright=1400"));
  }

  @Test
  void aKeyThatIsNotThereIsSaidToBeMissing() {
    assertEquals("rack.foot=80, which the file does not give", note(RACK, "rack.foot=80"));
  }

  @Test
  void forAnEntryTheListIsNamedAndNoOtherEntryIsShown() {
    assertEquals(
        "rack.openings[1].count=3 within what begins at trays.yaml:11",
        note(RACK, "rack.openings[1].count=3"));
    assertEquals(
        "rack.openings[0]=400 within trays.yaml:10: openings: [ 380, 380, 380 ]",
        note(
            RACK.replaceFirst("openings:(\n {4}.*){3}", "openings: [ 380, 380, 380 ]"),
            "rack.openings[0]=400"));
  }

  @Test
  void aValueBelowItsKeyIsNotTakenForTheWholeOfIt() {
    assertEquals(
        "rack.openings=[380] instead of what begins at trays.yaml:11",
        note(RACK, "rack.openings=[380]"));
    assertEquals("timber={} instead of what begins at trays.yaml:3", note(RACK, "timber={}"));
  }

  @Test
  void ofAFileThatIsOnlyRightWithTheSettingNothingIsClaimed() {
    assertEquals("rack.upright=1400", note(RACK.replace("1500", "high"), "rack.upright=1400"));
  }

  private static String note(String file, String setting) {
    byte[] bytes = file.getBytes(StandardCharsets.UTF_8);
    return new Changes(bytes, "trays.yaml", file.lines().toList()).note(setting);
  }
}
