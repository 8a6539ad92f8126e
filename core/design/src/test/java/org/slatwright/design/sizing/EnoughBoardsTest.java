package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.SlatYield.Count;

/** Two shelves of three slats of 580 + 2 × 44 = 668 mm; 10 mm off each end, kerf 3.2 mm. */
class EnoughBoardsTest {

  private static final String TEA_RACK =
      """
      slatwright: 1
      title: Rack for drying tea
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 90 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 580
        rail-length: 320
        foot: 100
        openings: [ 300 ]
      slats: { per-shelf: 3 }
      """;

  @Test
  void sixBoardsGiveSixSlatsAndFiveDoNot() throws Exception {
    assertEquals(Optional.empty(), warning(boards("{length: 688, width: 90, count: 6}")));
    assertEquals(
        "the boards give 5 of the 6 slats that the rack needs; missing: 1 of 668 mm",
        warning(boards("{length: 688, width: 90, count: 5}")).orElseThrow().message());
  }

  /** 20 + 2 × 668 + 3.2 = 1359.2. */
  @Test
  void aKerfFallsBetweenTwoSlats() throws Exception {
    assertEquals(Optional.empty(), warning(boards("{length: 1359.2, width: 90, count: 3}")));
    assertTrue(warning(boards("{length: 1359.1, width: 90, count: 3}")).isPresent());
  }

  /** 2 × 90 + 3.2 = 183.2. */
  @Test
  void aWideBoardIsRippedIntoTwo() throws Exception {
    assertEquals(Optional.empty(), warning(boards("{length: 688, width: 183.2, count: 3}")));
    assertTrue(warning(boards("{length: 688, width: 183.1, count: 3}")).isPresent());
  }

  @Test
  void aBoardNarrowerThanTheSlatsGivesNone() throws Exception {
    String boards =
        boards("{length: 688, width: 90, count: 5}", "{length: 4000, width: 89, count: 9}");

    assertTrue(warning(boards).isPresent());
  }

  @Test
  void whatIsAvoidedGivesNone() throws Exception {
    String whole = "{length: 1400, width: 90, count: 3, avoid: [%s]}";

    assertEquals(Optional.empty(), warning(boards(whole.formatted("700..720"))));
    assertTrue(warning(boards(whole.formatted("600..620"))).isPresent());
  }

  @Test
  void stockThatCanBeBoughtIsEndless() throws Exception {
    assertEquals(
        Optional.empty(),
        warning(boards("{length: 688, width: 90}"), "timber.slats.lengths=[{length: 2400}]"));
  }

  @Test
  void slatsThatMeetAreCountedByLength() throws Exception {
    // 44 + 580 + 22 = 646 outside, 22 + 580 + 22 = 624 in the middle
    Finding warning =
        warning(
                boards("{length: 666, width: 90, count: 10}", "{length: 644, width: 90, count: 5}"),
                "rack.bays=3",
                "slats.run=per-bay")
            .orElseThrow();

    assertEquals(
        "the boards give 15 of the 18 slats that the rack needs; missing: 2 of 646 mm and 1 of"
            + " 624 mm",
        warning.message());
  }

  @Test
  void theBoardsAdvisedAreEnough() throws Exception {
    String five = "{length: 1000, width: 95, count: 2}";
    String advice = warning(boards(five)).orElseThrow().advice();
    Matcher more =
        Pattern.compile("(\\d+) more boards at least (\\S+) mm long and (\\S+) mm wide")
            .matcher(advice);
    assertTrue(more.find(), advice);

    String bought =
        "{length: %s, width: %s, count: %s}".formatted(more.group(2), more.group(3), more.group(1));
    assertEquals(Optional.empty(), warning(boards(five, bought)));
    String oneLess =
        "{length: %s, width: %s, count: %s}"
            .formatted(more.group(2), more.group(3), Integer.parseInt(more.group(1)) - 1);
    assertTrue(warning(boards(five, oneLess)).isPresent());
  }

  /** Against every way to cut up every stretch. */
  @Property(tries = 300)
  void noWayOfCuttingLeavesFewerMissing(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 60) Integer> stretches,
      @ForAll @IntRange(min = 5, max = 20) int shorter,
      @ForAll @IntRange(min = 0, max = 10) int more,
      @ForAll @IntRange(min = 0, max = 3) int kerf,
      @ForAll @IntRange(min = 1, max = 6) int ofLonger,
      @ForAll @IntRange(min = 0, max = 6) int ofShorter) {
    Map<Length, Integer> alike = new TreeMap<>();
    stretches.forEach(mm -> alike.merge(Length.mm(mm), 1, Integer::sum));
    Count missing =
        new SlatYield(
                Length.mm(shorter + more),
                Length.mm(shorter),
                Length.mm(kerf),
                new Count(ofLonger, ofShorter))
            .missing(alike);

    assertEquals(
        fewestMissing(stretches, shorter + more, shorter, kerf, ofLonger, ofShorter),
        missing.all());
    assertTrue(missing.longer() >= 0 && missing.shorter() >= 0);
  }

  /** Cuts the next piece off the first stretch, or lays that stretch aside, in every way. */
  private static int fewestMissing(
      List<Integer> stretches, int longer, int shorter, int kerf, int ofLonger, int ofShorter) {
    if (stretches.isEmpty() || ofLonger + ofShorter == 0) {
      return ofLonger + ofShorter;
    }
    int left = stretches.get(0);
    List<Integer> rest = stretches.subList(1, stretches.size());
    int fewest = fewestMissing(rest, longer, shorter, kerf, ofLonger, ofShorter);
    if (ofLonger > 0 && left >= longer) {
      List<Integer> cut = cut(rest, left - longer - kerf);
      fewest = Math.min(fewest, fewestMissing(cut, longer, shorter, kerf, ofLonger - 1, ofShorter));
    }
    if (ofShorter > 0 && left >= shorter) {
      List<Integer> cut = cut(rest, left - shorter - kerf);
      fewest = Math.min(fewest, fewestMissing(cut, longer, shorter, kerf, ofLonger, ofShorter - 1));
    }
    return fewest;
  }

  private static List<Integer> cut(List<Integer> rest, int left) {
    List<Integer> all = new ArrayList<>(List.of(left));
    all.addAll(rest);
    return all;
  }

  private static String boards(String... boards) {
    return "timber.slats.boards=["
        + String.join(", ", boards).replace("width", "thickness: 18, width")
        + "]";
  }

  private static Optional<Finding> warning(String... settings) throws Exception {
    return solve(TEA_RACK, settings).notes().stream()
        .filter(note -> note.severity() == Finding.Severity.WARNING)
        .filter(note -> note.subject().equals("timber.slats.boards"))
        .findFirst();
  }
}
