package org.slatwright.design.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/** The jig from offcuts fits any stock that it is made for, with nothing bought or machined. */
@Domain(Benches.class)
class OffcutJigTest {

  private static final Length FAR = Length.mm(2000);

  @Property(tries = 200)
  void itGoesOntoTheGluedFrameAndGuidesAlongTheDowels(@ForAll Bench bench) {
    Rack rack = bench.rack();
    Assume.that(OffcutJig.of(rack).isPresent());
    Jig jig = OffcutJig.of(rack).orElseThrow();
    clearOfTheStock(rack, jig);
    noTwoPartsShareSpace(jig);
    boresGoThroughOnTheDowels(rack, jig);
    registerLiesOnTheRailInBothCheeks(rack, jig);
    assertFalse(jig.guideDepth().isLessThan(Saddle.leastGuideDepth(rack.joint().diameter())));
  }

  private static void clearOfTheStock(Rack rack, Jig jig) {
    Length side = rack.upright().width().half();
    Length depth = rack.upright().depth();
    Box upright =
        new Box(
            new Point3(side.negated(), Length.ZERO, FAR.negated()), new Point3(side, depth, FAR));
    Length railSide = rack.rail().width().half();
    Box rail =
        new Box(
            new Point3(railSide.negated(), depth, rack.rail().height().negated()),
            new Point3(railSide, FAR, Length.ZERO));
    for (Jig.Placed part : jig.placed()) {
      assertFalse(part.box().overlaps(upright), part.plate().name());
      assertFalse(part.box().overlaps(rail), part.plate().name());
    }
  }

  /** The register goes through the cheeks, in bores of its own size. */
  private static void noTwoPartsShareSpace(Jig jig) {
    List<Box> blocksAndCheeks =
        jig.placed().stream()
            .filter(part -> !part.plate().mark().equals("K3"))
            .map(Jig.Placed::box)
            .toList();
    for (Box one : blocksAndCheeks) {
      assertEquals(1, blocksAndCheeks.stream().filter(one::overlaps).count());
    }
  }

  private static void boresGoThroughOnTheDowels(Rack rack, Jig jig) {
    jig.placed().stream()
        .filter(part -> part.plate().mark().equals("K1"))
        .forEach(
            block -> {
              List<Outline.Circle> bores = block.plate().bores();
              assertEquals(rack.joint().heights().size(), bores.size());
              for (int i = 0; i < bores.size(); i++) {
                Outline.Circle bore = bores.get(i);
                Point3 at =
                    block
                        .placement()
                        .toRack(new Point3(bore.centre().x(), bore.centre().y(), Length.ZERO));
                assertTrue(at.x().abs().nanometres() <= 1, "in the middle of the upright");
                assertEquals(jig.railEdgeToHoles().get(i).negated(), at.z());
                assertEquals(rack.joint().diameter(), bore.diameter());
              }
            });
  }

  private static void registerLiesOnTheRailInBothCheeks(Rack rack, Jig jig) {
    Box pin = jig.placed().get(jig.placed().size() - 1).box();
    assertEquals(Length.ZERO, pin.low().z());
    assertTrue(pin.low().y().isMoreThan(rack.upright().depth()));
    Length half = pin.size(Axis.Z).half();
    for (Jig.Placed cheek : jig.placed()) {
      if (cheek.plate().mark().equals("K2")) {
        Outline.Circle bore = cheek.plate().bores().get(0);
        Point3 at =
            cheek.placement().toRack(new Point3(bore.centre().x(), bore.centre().y(), Length.ZERO));
        assertEquals(pin.low().y().plus(half), at.y());
        assertEquals(pin.low().z().plus(half), at.z());
      }
    }
  }

  @Example
  void thinUprightsTakeTwoBlocksOnOneAnother() {
    Jig jig = OffcutJig.of(Bench.measured(44, 20, 10, 6).rack()).orElseThrow();
    assertEquals(2, jig.plates().get(0).quantity());
    assertEquals(Length.mm(40), jig.guideDepth());
  }

  @Example
  void railsWiderThanTheUprightsCannotBeStraddled() {
    assertTrue(OffcutJig.of(Bench.square(44, 10, 6).withRail(50, 70, 1).rack()).isEmpty());
  }

  @Example
  void itIsOfferedWhereSheetLeavesTooLittleWeb() {
    MadeJig made = JigMaker.make(Bench.square(20, 10, 6).rack());
    assertTrue(made.jig().isEmpty());
    assertTrue(made.offcutJig().isPresent());
  }
}
