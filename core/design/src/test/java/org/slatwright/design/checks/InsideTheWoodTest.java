package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.RandomRacks;

/** Brads, screws and dowels put where they must not be, one at a time. */
class InsideTheWoodTest {

  private static final List<Rule> RULES =
      List.of(
          new FastenerMeetsDowel(),
          new FastenersMeet(),
          new FastenerComesOut(),
          new HoleBreaksOut(),
          new DowelsMeet());

  @ParameterizedTest
  @ValueSource(strings = {"", "slats.run=per-bay", "joint.dowels=2", "joint.fixing.kind=screw"})
  void anOrdinaryRackHasNothingThatMeets(String setting) throws Exception {
    Design design = setting.isEmpty() ? Designs.of(ORCHIDS) : wide(setting);

    for (Rule rule : RULES) {
      assertEquals(List.of(), rule.check(design).toList());
    }
  }

  @Test
  void aBradOverADowelRunsIntoIt() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Joint joint = design.assembly().joints().get(0);
    Bore hole = joint.rail().bore(joint.pins().get(0).railHole());
    Fastener first = onto(design, joint.rail());
    Point3 above =
        new Point3(hole.mouth().x(), hole.mouth().y().plus(Length.mm(10)), first.head().z());
    Point3 mirrored =
        new Point3(hole.mouth().x(), hole.mouth().y().minus(Length.mm(10)), first.head().z());
    Point3 head = hole.inward() == Direction.PLUS_Y ? above : mirrored;

    Finding finding = only(new FastenerMeetsDowel(), changed(design, first, f -> at(f, head)));

    assertEquals(Severity.ERROR, finding.severity());
    assertEquals("0 mm", finding.value());
    assertEquals("at least 1 mm", finding.limit());
    assertTrue(finding.advice().contains("joint.fixing."), finding.advice());
  }

  @Test
  void aBradLongerThanSlatAndRailComesOutBelow() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Fastener first = design.assembly().fasteners().get(0);

    Finding out =
        only(new FastenerComesOut(), changed(design, first, f -> longer(f, Length.mm(63))));
    assertEquals(Severity.ERROR, out.severity());
    Finding flush =
        only(new FastenerComesOut(), changed(design, first, f -> longer(f, Length.mm(62))));
    assertEquals(Severity.WARNING, flush.severity());
    assertEquals("0 mm", flush.value());
    assertEquals(
        List.of(),
        new FastenerComesOut()
            .check(changed(design, first, f -> longer(f, Length.mm(61))))
            .toList());
  }

  @Test
  void aBradInTheSideOfARailComesOut() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Fastener first = design.assembly().fasteners().get(0);
    Point3 side = new Point3(first.into().box().low().x(), first.head().y(), first.head().z());

    Finding finding = only(new FastenerComesOut(), changed(design, first, f -> at(f, side)));

    assertEquals(Severity.ERROR, finding.severity());
    assertEquals("brads", finding.subject());
  }

  @Test
  void twoBradsInOnePlaceMeet() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Fastener first = design.assembly().fasteners().get(0);
    Fastener second = design.assembly().fasteners().get(1);
    assertEquals(first.into(), second.into());
    Point3 near = second.head().moved(Direction.PLUS_Y, Length.roundedMm(1.5));

    assertEquals(
        Severity.ERROR,
        only(new FastenersMeet(), changed(design, first, f -> at(f, second.head()))).severity());
    Finding finding = only(new FastenersMeet(), changed(design, first, f -> at(f, near)));
    assertEquals(Severity.WARNING, finding.severity());
    assertEquals("0.3 mm", finding.value());
  }

  @Test
  void aHoleTooNearToAFaceBreaksOut() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Piece rail = design.assembly().joints().get(0).rail();

    Finding broken = only(new HoleBreaksOut(), drilled(design, rail, hole("4.5", "22", 30)));
    assertEquals(Severity.ERROR, broken.severity());
    Finding thin = only(new HoleBreaksOut(), drilled(design, rail, hole("22", "38.5", 30)));
    assertEquals(Severity.WARNING, thin.severity());
    assertEquals("0.5 mm", thin.value());
    Finding deep = only(new HoleBreaksOut(), drilled(design, rail, hole("22", "22", 321)));
    assertEquals(Severity.ERROR, deep.severity());
  }

  /** The rail is 320 long. */
  @Test
  void dowelsFromBothEndsOfARailMeet() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Piece rail = design.assembly().joints().get(0).rail();
    Hole other = new Hole("y", Face.FAR_END, mm("22"), mm("22"), mm("10"), Length.mm(20), false);

    assertEquals(
        Severity.ERROR,
        only(new DowelsMeet(), drilled(design, rail, hole("22", "22", 301), other)).severity());
    assertEquals(
        Severity.WARNING,
        only(new DowelsMeet(), drilled(design, rail, hole("22", "22", 300), other)).severity());
    assertEquals(
        List.of(),
        new DowelsMeet().check(drilled(design, rail, hole("22", "22", 299), other)).toList());
  }

  /** 36 + 2 × 4 = 44 leaves no wood but passes, 37 + 2 × 4 = 45 does not. */
  @Test
  void aDowelThatLeavesNoRoomBesideItIsFound() throws Exception {
    String screws = "joint.fixing={kind: screw, length: 45, diameter: 4}";
    String[] thick = {screws, "joint.embedment=35", "timber.dowel.diameter=37"};
    String[] passing = {screws, "joint.embedment=35", "timber.dowel.diameter=36"};

    Finding meets = Designs.finding("fastener-meets-dowel", ORCHIDS, thick);
    assertEquals(Severity.ERROR, meets.severity());
    for (List<String> change : Advice.changes(meets)) {
      List<String> all = Advice.joined(List.of(thick), change);
      assertEquals(
          List.of(), new FastenerMeetsDowel().check(Designs.of(ORCHIDS, all)).toList(), "" + all);
    }
    assertEquals(
        List.of("timber.dowel.diameter=14"), Advice.changes(meets).get(0), "44 - 7 x 4 - 2");
    assertEquals(
        Severity.WARNING, Designs.finding("fastener-meets-dowel", ORCHIDS, passing).severity());
  }

  /** Points all over each shank, none of which may lie in a dowel hole unless it is said. */
  @Property(tries = 60)
  void noBradLiesInADowelHoleWithoutAnError(@ForAll("racks") String yaml) throws Exception {
    Design design = Designs.of(yaml);
    boolean said =
        new FastenerMeetsDowel()
            .check(design)
            .anyMatch(finding -> finding.severity() == Severity.ERROR);

    boolean meets = false;
    for (Joint joint : design.assembly().joints()) {
      for (Joint.Pin pin : joint.pins()) {
        Bore hole = joint.rail().bore(pin.railHole());
        for (Fastener fastener : design.assembly().fasteners()) {
          meets |= fastener.into().id().equals(joint.rail().id()) && liesIn(fastener, hole);
        }
      }
    }
    assertFalse(meets && !said, yaml);
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.solvable();
  }

  private static boolean liesIn(Fastener fastener, Bore hole) {
    double away = hole.inward().sign();
    for (int i = 0; i <= 200; i++) {
      for (int j = 0; j < 16; j++) {
        double radius = fastener.diameter().inMm() / 2;
        double x = fastener.head().x().inMm() + radius * Math.cos(Math.PI * j / 8);
        double y = fastener.head().y().inMm() + radius * Math.sin(Math.PI * j / 8);
        double z = fastener.head().z().inMm() - fastener.length().inMm() * i / 200;
        double along = (y - hole.mouth().y().inMm()) * away;
        double across = Math.hypot(x - hole.mouth().x().inMm(), z - hole.mouth().z().inMm());
        if (along > 1e-5
            && along < hole.depth().inMm() - 1e-5
            && across < hole.diameter().inMm() / 2 - 1e-5) {
          return true;
        }
      }
    }
    return false;
  }

  /** Rails high and wide enough for two dowels, and for screws beside them. */
  private static Design wide(String setting) throws Exception {
    return Designs.of(
        ORCHIDS, "timber.frame={section: 60 x 60}", "rack.openings=[280, 240]", setting);
  }

  private static Finding only(Rule rule, Design design) {
    List<Finding> found = rule.check(design).toList();
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  private static Fastener onto(Design design, Piece rail) {
    return design.assembly().fasteners().stream()
        .filter(fastener -> fastener.into().id().equals(rail.id()))
        .findFirst()
        .orElseThrow();
  }

  private static Fastener at(Fastener was, Point3 head) {
    return new Fastener(
        was.kind(), was.length(), was.diameter(), head, was.inward(), was.through(), was.into());
  }

  private static Fastener longer(Fastener was, Length length) {
    return new Fastener(
        was.kind(), length, was.diameter(), was.head(), was.inward(), was.through(), was.into());
  }

  private static Design changed(Design design, Fastener one, UnaryOperator<Fastener> change) {
    Assembly was = design.assembly();
    List<Fastener> fasteners = new ArrayList<>(was.fasteners());
    fasteners.set(fasteners.indexOf(one), change.apply(one));
    return with(
        design, new Assembly(was.parts(), was.pieces(), was.groups(), was.joints(), fasteners));
  }

  /** With nothing but one piece, which has other holes. */
  private static Design drilled(Design design, Piece piece, Hole... holes) {
    Part was = piece.part();
    Part part =
        new Part(
            was.mark(),
            was.name(),
            was.role(),
            was.shape(),
            was.material(),
            was.grain(),
            List.of(holes),
            1);
    Piece drilled = new Piece(piece.id(), part, piece.placement());
    return with(
        design, new Assembly(List.of(part), List.of(drilled), List.of(), List.of(), List.of()));
  }

  private static Design with(Design design, Assembly assembly) {
    return new Design(design.rack(), assembly, design.quantities(), design.jig());
  }

  private static Hole hole(String along, String across, long depth) {
    return new Hole("x", Face.START_END, mm(along), mm(across), mm("10"), Length.mm(depth), false);
  }

  private static Length mm(String text) {
    return Length.roundedMm(Double.parseDouble(text));
  }
}
