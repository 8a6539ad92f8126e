package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.Jig;

class JigClearanceTest {

  private static final String RULE = "jig-clearance";
  private static final String BETWEEN = "jig between two rails";
  private static final Pattern OPENINGS = Pattern.compile("openings of at least (\\d+) mm");
  private static final Pattern END = Pattern.compile("(rack\\.\\w+)=(\\d+)");

  @Test
  void onAnOrdinaryRackOnlyTheBlocksAreSaid() throws Exception {
    assertEquals(List.of("jig over the bench"), Told.of(ORCHIDS).subjects(RULE));
  }

  /**
   * A register of 12 mm over slats of 9 mm: between rails 11 mm apart it does not go, at 12 it
   * does.
   */
  @Test
  void aRegisterThickerThanTheRoomBetweenTwoRailsDoesNotGoIn() throws Exception {
    String[] tight = {"timber.slats.section=9 x 70", "shop.jig-sheet=12", "rack.openings=[300, 2]"};
    Finding finding = between(Told.of(ORCHIDS, tight)).get(0);

    assertEquals(Severity.WARNING, finding.severity());
    assertEquals("11 mm of room", finding.value());
    assertEquals("at least 12 mm", finding.limit());
    Matcher advised = OPENINGS.matcher(finding.advice());
    assertTrue(advised.find());
    tight[2] = "rack.openings=[300, " + advised.group(1) + "]";
    assertEquals(List.of(), between(Told.of(ORCHIDS, tight)));
  }

  /**
   * Told exactly when, in the finished rack, a plate of the jig is inside the wood of its frame.
   */
  @Property(tries = 40)
  void theJigIsTightExactlyWhereAPlateMeetsTheWoodOfTheFrame(
      @ForAll @IntRange(min = 6, max = 20) int sheet,
      @ForAll @IntRange(min = 6, max = 20) int slat,
      @ForAll @IntRange(min = 1, max = 20) int opening)
      throws Exception {
    Told told =
        Told.of(
            ORCHIDS,
            "timber.slats.section=" + slat + " x 70",
            "timber.frame.section=60 x 60",
            "shop.jig-sheet=" + sheet,
            "rack.openings=[300, " + opening + "]");
    if (told.plan().jig().isPresent()) {
      assertEquals(meetsWood(told), !between(told).isEmpty());
    }
  }

  /** Puts the jig on the front upright of the left frame, at every rail. */
  private static boolean meetsWood(Told told) {
    Jig jig = told.plan().jig().orElseThrow();
    List<Piece> uprights = told.plan().assembly().pieces(Role.UPRIGHT);
    Box upright =
        uprights.stream().map(Piece::box).reduce((a, b) -> lower(a, b) ? a : b).orElseThrow();
    List<Box> rails =
        told.plan().assembly().pieces(Role.RAIL).stream()
            .map(Piece::box)
            .filter(box -> box.low().x().isLessThan(upright.high().x()))
            .toList();
    Length middle = upright.low().x().plus(upright.size(Axis.X).half());
    return rails.stream()
        .map(rail -> new Point3(middle, upright.low().y(), rail.high().z()))
        .anyMatch(
            at ->
                jig.placed().stream()
                    .map(placed -> moved(placed.box(), at))
                    .anyMatch(plate -> rails.stream().anyMatch(plate::overlaps)));
  }

  private static boolean lower(Box a, Box b) {
    return a.low().x().plus(a.low().y()).isLessThan(b.low().x().plus(b.low().y()));
  }

  private static Box moved(Box box, Point3 by) {
    return new Box(plus(box.low(), by), plus(box.high(), by));
  }

  private static Point3 plus(Point3 a, Point3 b) {
    return new Point3(a.x().plus(b.x()), a.y().plus(b.y()), a.z().plus(b.z()));
  }

  @Test
  void theEndsThatTheJigStandsOutFromAreNamedAndTheAdviceKeepsItOn() throws Exception {
    String[] short_ = {
      "rack.foot=0",
      "rack.top=flush",
      "timber.slats.section=8 x 70",
      "joint.dowels=2",
      "shop.jig-sheet=9"
    };
    List<Finding> ends = ends(Told.of(ORCHIDS, short_));
    assertEquals(
        List.of("jig at the floor end", "jig at the top end"),
        ends.stream().map(Finding::subject).toList());

    for (Finding end : ends) {
      Matcher advised = END.matcher(end.advice());
      assertTrue(advised.find());
      List<String> followed = new ArrayList<>(List.of(short_));
      followed.add(advised.group(1) + "=" + advised.group(2));
      assertTrue(
          ends(Told.of(ORCHIDS, followed.toArray(String[]::new))).stream()
              .noneMatch(left -> left.subject().equals(end.subject())));
    }
  }

  /** With the blocks advised, nothing of jig or chuck is lower than the bench. */
  @Property(tries = 30)
  void theBlocksLiftJigAndChuckOffTheBench(@ForAll("sections") String section) throws Exception {
    Told told = Told.of(ORCHIDS, "timber.frame.section=" + section);
    if (told.plan().jig().isEmpty()) {
      return;
    }
    Jig jig = told.plan().jig().get();
    Length blocks =
        told.by(RULE).stream()
            .filter(finding -> finding.subject().equals("jig over the bench"))
            .map(finding -> told.length(finding.limit().replace("at least ", "")))
            .findFirst()
            .orElse(Length.ZERO);
    Length half = told.plan().assembly().pieces(Role.UPRIGHT).get(0).box().size(Axis.X).half();
    Length axis = half.plus(blocks);
    Length underJig =
        jig.placed().stream()
            .map(placed -> placed.box().high().x())
            .reduce(Length::max)
            .orElseThrow();

    assertTrue(!axis.isLessThan(Length.roundedMm(22.5)), "chuck of 45 mm");
    assertTrue(!axis.isLessThan(underJig), "jig");
  }

  @Provide
  Arbitrary<String> sections() {
    return Arbitraries.integers().between(300, 600).map(n -> n / 10 + "." + n % 10 + " x 44");
  }

  private static List<Finding> between(Told told) {
    return told.by(RULE).stream().filter(f -> f.subject().equals(BETWEEN)).toList();
  }

  private static List<Finding> ends(Told told) {
    return told.by(RULE).stream().filter(f -> f.subject().endsWith(" end")).toList();
  }
}
