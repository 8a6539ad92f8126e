package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.sizing.Rack;

/** The dimension chains of the views of a rack at some scale. */
record RackDimensions(Rack rack, LengthFormat lengths, Scale scale) {

  /** Heights, for the left of the front view. */
  ChainPair heights() {
    return ChainPair.up(links(HeightSteps.of(rack, lengths)), lengths);
  }

  /** Frames and bays, for below the front view. */
  ChainPair widths() {
    Length overhang = rack.slats().overhang();
    WidthSteps steps =
        new WidthSteps(
            overhang, rack.upright().width(), rack.interiorWidth(), rack.bays(), overhang);
    return ChainPair.across(links(steps.of(lengths)), lengths);
  }

  /** Uprights and rail, for below the side view. */
  ChainPair depths() {
    Length upright = rack.upright().depth();
    return across(List.of(upright, rack.rail().length(), upright));
  }

  private ChainPair across(List<Length> inOrder) {
    List<HeightSteps.Step> steps =
        inOrder.stream()
            .filter(Length::isPositive)
            .map(length -> new HeightSteps.Step(length, lengths.number(length)))
            .toList();
    return ChainPair.across(links(steps), lengths);
  }

  private List<Link> links(List<HeightSteps.Step> steps) {
    return HeightSteps.links(steps, Length.ZERO, at -> at.inMm() * scale.factor());
  }
}
