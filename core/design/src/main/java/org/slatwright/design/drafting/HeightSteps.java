package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.sizing.Rack;

/**
 * The links of the height chain as they are drawn: foot, shelf (rail and slat), clear height,
 * shelf, …, top. In a tall rack, equal shelves in a row become one link, {@code 6 × 150 (= 900)}.
 */
final class HeightSteps {

  private static final int MOST_DRAWN_ONE_BY_ONE = 8;

  /** A link of that size, and what is written at it. */
  record Step(Length length, String text) {}

  private final Rack rack;
  private final LengthFormat lengths;

  private HeightSteps(Rack rack, LengthFormat lengths) {
    this.rack = rack;
    this.lengths = lengths;
  }

  /** From the floor up; they add up to the length of the uprights. */
  static List<Step> of(Rack rack, LengthFormat lengths) {
    return new HeightSteps(rack, lengths).steps();
  }

  /**
   * One after the other.
   *
   * @param from where the first one starts
   * @param onPaper where a place lies along the chain, in mm
   */
  static List<Link> links(List<Step> steps, Length from, ToDoubleFunction<Length> onPaper) {
    List<Link> links = new ArrayList<>();
    Length at = from;
    for (Step step : steps) {
      Length end = at.plus(step.length());
      links.add(
          new Link(
              onPaper.applyAsDouble(at), onPaper.applyAsDouble(end), step.length(), step.text()));
      at = end;
    }
    return links;
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    Length shelf = rack.rail().height().plus(rack.slats().thickness());
    add(steps, rack.foot());
    List<Length> openings = rack.openings();
    for (int i = 0; i < openings.size(); ) {
      int alike = rack.shelves() > MOST_DRAWN_ONE_BY_ONE ? alike(openings, i) : 1;
      Length opening = openings.get(i);
      if (alike > 1) {
        Length pitch = shelf.plus(opening);
        Length all = pitch.times(alike);
        steps.add(new Step(all, repeated(alike, pitch, all, lengths)));
      } else {
        add(steps, shelf);
        add(steps, opening);
      }
      i += alike;
    }
    add(steps, shelf);
    add(steps, rack.topAbove());
    return steps;
  }

  private void add(List<Step> steps, Length length) {
    if (length.isPositive()) {
      steps.add(new Step(length, lengths.number(length)));
    }
  }

  /** What is written at {@code count} equal pitches in a row (ISO 129-1). */
  static String repeated(int count, Length pitch, Length all, LengthFormat lengths) {
    return count + " × " + lengths.number(pitch) + " (= " + lengths.number(all) + ")";
  }

  /** How many openings from one on are as high as it is. */
  static int alike(List<Length> openings, int from) {
    int end = from;
    while (end < openings.size() && openings.get(end).equals(openings.get(from))) {
      end++;
    }
    return end - from;
  }
}
