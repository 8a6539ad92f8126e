package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Problem;

/** Slats as wide as their boards, 580 + 2 × 44 = 668 mm long; each board gives one. */
class BoardRowsTest {

  private static final String PEAR_RACK =
      """
      slatwright: 1
      title: Rack for winter pears
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { boards: [] }
        dowel: { diameter: 10 }
      rack: { interior-width: 580, rail-length: 310, foot: 100, openings: [ 300 ] }
      """;

  private static String of(String... boards) {
    return PEAR_RACK.replace("[]", "[ " + String.join(", ", boards) + " ]");
  }

  private static String board(int width, int count) {
    return "{ length: 700, width: " + width + ", thickness: 18, count: " + count + " }";
  }

  /**
   * 310 - 2 × 140 = 30 and 310 - 3 × 95 = 25: nothing else closes, since a 140 and two 95 do not.
   */
  @Test
  void eachShelfIsFilledWithWholeBoards() throws Exception {
    Rack rack = solve(of(board(140, 2), board(95, 3)));

    assertTrue(rack.boardChoice().isPresent());
    assertEquals(
        "2 slats on shelf 1; 3 slats on shelf 2: as the boards allow",
        note(rack, "slats.per-shelf"));
    assertEquals(
        "the gaps between slats are 12 to 20 mm: what the boards leave, shared equally on each"
            + " shelf",
        note(rack, "slats.gap"));
    assertEquals("no note on timber.slats.boards", note(rack, "timber.slats.boards"));
    assertEquals(
        List.of("height", "depth", "width", "slat row, shelf 1", "slat row, shelf 2", "dowel"),
        rack.chains().stream().map(Chain::name).toList());
    assertEquals(
        "slat 95, gap 12*, slat 95, gap 12*, slat 95, margin 1*", links(rack, "slat row, shelf 2"));
    assertEquals(
        "margin 5*, slat 140, gap 20*, slat 140, margin 5*", links(rack, "slat row, shelf 1"));
  }

  @Test
  void rowsThatAreAlikeAreOneChain() throws Exception {
    Rack rack = solve(of(board(95, 6)));

    assertEquals("slat 95, gap 12*, slat 95, gap 12*, slat 95, margin 1*", links(rack, "slat row"));
    assertEquals("3 slats to a shelf: as the boards allow", note(rack, "slats.per-shelf"));
  }

  /** Whole, 124 with two of 95 leaves no gap at all; 97 leaves 310 - 287 = 23, two of 11. */
  @Test
  void aRippedBoardIsNamedWithWhatItBecomes() throws Exception {
    Rack rack = solve(of(board(95, 5), board(124, 1)));

    assertEquals(
        "B6 is ripped to 97 mm for shelf 2: whole boards alone do not fill as many shelves",
        note(rack, "timber.slats.boards"));
  }

  /**
   * Beside the one of 95, two slats take 310 - 95 - 2 × 20 - 2 × 20 = 135 at least, margins of 20
   * included, and 310 - 95 - 2 × 3 = 209 at most: whole millimetres of 67.5 to 104.5 each.
   */
  @Test
  void whatIsStillToBeFoundIsTold() throws Exception {
    Rack rack = solve(of(board(95, 4)));
    Finding warning =
        rack.notes().stream()
            .filter(note -> note.severity() == Finding.Severity.WARNING)
            .findFirst()
            .orElseThrow();

    assertEquals("timber.slats.boards", warning.subject());
    assertEquals(
        "the boards fill shelf 1 alone; still to be found: 2 slats of 668 mm × 95 mm × 18 mm for"
            + " shelf 2 (68 to 104 mm wide and 16 to 18 mm thick will do)",
        warning.message());
    assertEquals(
        "add boards to timber.slats.boards, 20 mm longer than their slats where both ends are"
            + " squared off, or make the rack smaller",
        warning.advice());
  }

  /** 8 slats of 100 on each of 5 shelves, from 40 boards that are all of different widths. */
  @Test
  void aChoiceThatIsNotProvedTheBestSaysSo() throws Exception {
    String[] boards = IntStream.range(0, 40).mapToObj(i -> board(80 + i, 1)).toArray(String[]::new);
    String yaml =
        of(boards)
            .replace("rail-length: 310", "rail-length: 880")
            .replace("[ 300 ]", "[ { clear: 300, count: 4 } ]");
    Rack many = solve(yaml, "slats.per-shelf=8");
    Rack few = solve(of(board(95, 6)));

    assertEquals(
        "the slats are the best choice found, not proved the best: there are too many ways to share"
            + " out these boards to try them all",
        note(many, "timber.slats.boards"));
    assertEquals("no note on timber.slats.boards", note(few, "timber.slats.boards"));
  }

  @Test
  void rowsOfEachBayHaveTheirOwnChains() throws Exception {
    Rack rack =
        solve(
            of(board(95, 9), board(140, 2)),
            "rack.bays=2",
            "slats.run=per-bay",
            "rack.rail-length=310");

    assertEquals(
        List.of("slat row, shelf 1 bay 1", "slat row, shelf 2 and shelf 1 bay 2"),
        rack.chains().stream().map(Chain::name).filter(name -> name.startsWith("slat")).toList());
  }

  /** 3 × 92, the middle board, and two gaps of 11. */
  @Test
  void railsLeftOutAreWhatSlatsOfTheMiddleWidthTake() throws Exception {
    String yaml =
        of(board(80, 2), board(92, 3), board(118, 2))
            .replace("rail-length: 310, ", "")
            .concat("slats: { per-shelf: 3 }\n");
    Rack rack = solve(yaml);

    assertEquals(Length.mm(298), rack.rail().length());
    assertEquals(
        "the rails are 298 mm: what 3 slats of 92 mm take, the middle width of the boards",
        note(rack, "rack.rail-length"));
  }

  /** 2 × 95 and three openings of 20 are 250. */
  @Test
  void aCountThatNoBoardsCloseIsRefusedWithWhatWouldDo() throws Exception {
    String yaml = of(board(95, 6)).concat("slats: { per-shelf: 2, gap-range: 3..20 }\n");
    Problem problem = problem(yaml);

    assertEquals(
        "2 slats of 95 mm, the widest board, leave wider gaps than 20 mm on rails of 310 mm",
        problem.message());
    assertEquals(
        List.of("rack.rail-length=250", "slats.per-shelf=3", "slats.gap-range=3..120"),
        provenChanges(problem, yaml));
  }

  @Test
  void aCountThatIsTooManyIsRefusedWithWhatWouldDo() throws Exception {
    String yaml = of(board(95, 6)).concat("slats: { per-shelf: 8 }\n");
    Problem problem = problem(yaml);

    assertEquals(
        "8 slats of 40 mm, the narrowest that the boards give, take 320 mm, 10 mm more than the"
            + " rails of 310 mm",
        problem.message());
    assertEquals(
        List.of("rack.rail-length=320", "slats.per-shelf=7"), provenChanges(problem, yaml));
  }

  /** Slats of 40 to 45: five leave more than 4 at each of six openings, six have no room. */
  @Test
  void aRailThatNoNumberOfSlatsClosesIsRefused() throws Exception {
    String yaml =
        of(board(45, 30))
            .replace("rail-length: 310", "rail-length: 250")
            .concat("slats: { gap-range: 3..4 }\n");
    Problem problem = problem(yaml);

    assertEquals(
        "no number of slats from 40 mm to 45 mm wide leaves gaps of 3 mm to 4 mm on rails of 250 mm",
        problem.message());
    assertEquals(
        List.of("rack.rail-length=249", "rack.rail-length=255"), provenChanges(problem, yaml));
  }

  @Test
  void heightsAreReckonedWithTheThickestBoard() throws Exception {
    Rack rack =
        solve(
            of(board(95, 5), board(95, 1).replace("thickness: 18", "thickness: 16")),
            "slats.thickness-step=2");

    assertEquals(Length.mm(18), rack.slats().thickness());
    assertEquals(Length.mm(16), rack.slats().thinnest());
    assertEquals(
        "heights are reckoned with slats of 18 mm, the thickest board: thinner ones end lower",
        note(rack, "timber.slats.boards"));
  }

  /** As a row of alike slats is: (310 - 2 × 95) / 1 = 120. */
  @Test
  void gapsOutsideTheUsualAreAWarningWhereTheCountAsksForThem() throws Exception {
    Rack rack = solve(of(board(95, 6)).concat("slats: { per-shelf: 2 }\n"));

    assertTrue(
        rack.notes().stream()
            .anyMatch(
                found ->
                    found.severity() == Finding.Severity.WARNING
                        && found.message().endsWith("outside the usual 3 mm to 20 mm")));
  }
}
