package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Joint;

class DepthGaugeTest {

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void theStopLeavesAsMuchOfTheBitAsTheHoleIsDeep(Drawn rack) {
    Ruled gauge = new Ruled(rack.draft("depth-gauge"));
    Joint.Pin pin = rack.assembly().joints().get(3).pins().get(0);
    Length inRail = pin.railHole().depth();
    Length inWood = inRail.plus(rack.rack().upright().depth());
    Length withJig = inWood.plus(rack.jig().orElseThrow().guideDepth());
    Envelope upright =
        gauge.boxes().stream()
            .filter(box -> box.getWidth() < gauge.draft().width().inMm())
            .findFirst()
            .orElseThrow();
    List<Double> ends = gauge.levels(upright.getMinX(), upright.getMaxX());
    assertEquals(inRail.inMm(), upright.getMinY() - ends.get(0), Ruled.EXACT);
    assertEquals(inWood.inMm(), upright.getMaxY() - ends.get(0), Ruled.EXACT);
    assertEquals(withJig.inMm(), ends.get(1) - ends.get(0), Ruled.EXACT);
    assertTrue(gauge.texts().contains("stop without the jig " + rack.lengths().number(inWood)));
    assertTrue(gauge.texts().contains("stop with the jig " + rack.lengths().number(withJig)));
  }

  @Test
  void withoutAJigThereIsOneStop() {
    Drawn rack = Drawn.example("seed-trays", "shop.jig-sheet=1");
    assertTrue(rack.jig().isEmpty());
    List<String> texts = new Ruled(rack.draft("depth-gauge")).texts();
    assertTrue(texts.contains("stop 81"), texts::toString);
    assertTrue(texts.stream().noneMatch(text -> text.contains("jig")), texts::toString);
  }
}
