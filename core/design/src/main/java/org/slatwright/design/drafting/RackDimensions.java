package org.slatwright.design.drafting;

import java.util.ArrayList;
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
    List<Length> steps = new ArrayList<>();
    steps.add(rack.slats().overhang());
    for (int frame = 0; frame < rack.frames(); frame++) {
      if (frame > 0) {
        steps.add(rack.interiorWidth());
      }
      steps.add(rack.upright().width());
    }
    steps.add(rack.slats().overhang());
    return across(steps);
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
    List<Link> links = new ArrayList<>();
    Length at = Length.ZERO;
    for (HeightSteps.Step step : steps) {
      Length end = at.plus(step.length());
      links.add(
          new Link(
              at.inMm() * scale.factor(), end.inMm() * scale.factor(), step.length(), step.text()));
      at = end;
    }
    return links;
  }
}
