package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.sizing.Rack;

/** The dimension chains of the views of a rack, each with its overall dimension outside it. */
record RackDimensions(Rack rack, LengthFormat lengths) {

  static final double FIRST_CHAIN = 9;
  static final double NEXT_ACROSS = 8;
  static final double NEXT_UP = 12;

  /** How far chains and their numbers reach to the left of a view, in mm on paper. */
  static final double ROOM_LEFT = FIRST_CHAIN + NEXT_UP + 12;

  /** How far they reach below it. */
  static final double ROOM_BELOW = FIRST_CHAIN + NEXT_ACROSS + 3;

  /** Heights, to the left of the front view. */
  List<Figure> heights(RackView view) {
    List<Link> links = links(Heights.of(rack, lengths), view.bottom(), view);
    double edge = view.left();
    List<Figure> figures = new ArrayList<>(DimensionChain.up(edge - FIRST_CHAIN, edge, links));
    figures.addAll(
        DimensionChain.up(
            edge - FIRST_CHAIN - NEXT_UP, edge - FIRST_CHAIN, List.of(overall(links))));
    return figures;
  }

  /** Frames and bays, below the front view. */
  List<Figure> widths(RackView view) {
    List<Length> steps = new ArrayList<>();
    steps.add(rack.slats().overhang());
    for (int frame = 0; frame < rack.frames(); frame++) {
      if (frame > 0) {
        steps.add(rack.interiorWidth());
      }
      steps.add(rack.upright().width());
    }
    steps.add(rack.slats().overhang());
    return across(view, steps);
  }

  /** Uprights and rail, below the side view. */
  List<Figure> depths(RackView view) {
    Length upright = rack.upright().depth();
    return across(view, List.of(upright, rack.rail().length(), upright));
  }

  private List<Figure> across(RackView view, List<Length> lengthsInOrder) {
    List<Heights.Step> steps =
        lengthsInOrder.stream()
            .filter(Length::isPositive)
            .map(length -> new Heights.Step(length, lengths.number(length)))
            .toList();
    List<Link> links = links(steps, view.left(), view);
    double edge = view.bottom();
    List<Figure> figures = new ArrayList<>(DimensionChain.across(edge - FIRST_CHAIN, edge, links));
    figures.addAll(
        DimensionChain.across(
            edge - FIRST_CHAIN - NEXT_ACROSS, edge - FIRST_CHAIN, List.of(overall(links))));
    return figures;
  }

  private static List<Link> links(List<Heights.Step> steps, double origin, RackView view) {
    List<Link> links = new ArrayList<>();
    Length at = Length.ZERO;
    double factor = view.scale().factor();
    for (Heights.Step step : steps) {
      Length end = at.plus(step.length());
      links.add(
          new Link(
              origin + at.inMm() * factor,
              origin + end.inMm() * factor,
              step.length(),
              step.text()));
      at = end;
    }
    return links;
  }

  private Link overall(List<Link> links) {
    Length total = links.stream().map(Link::value).reduce(Length.ZERO, Length::plus);
    return new Link(
        links.get(0).from(), links.get(links.size() - 1).to(), total, lengths.number(total));
  }
}
