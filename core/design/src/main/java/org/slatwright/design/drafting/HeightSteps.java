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
 * shelf, …, top. In a tall rack, equal shelves in a row become one link, {@code 6 × 150 (= 900)},
 * and so do unequal ones, which the frame sheet has one by one.
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
      int alike = isTall(rack) ? alike(openings, i) : 1;
      int unlike = isTall(rack) ? unlike(openings, i) : 1;
      Length pitch = shelf.plus(openings.get(i));
      if (alike > 1) {
        Length all = pitch.times(alike);
        steps.add(new Step(all, repeated(alike, pitch, all, lengths)));
      } else if (unlike > 1) {
        add(
            steps,
            openings.subList(i, i + unlike).stream()
                .map(shelf::plus)
                .reduce(Length.ZERO, Length::plus));
      } else {
        add(steps, shelf);
        add(steps, openings.get(i));
      }
      i += Math.max(alike, unlike);
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

  /** Whether every height would be too much to read in one chain. */
  static boolean isTall(Rack rack) {
    return rack.shelves() > MOST_DRAWN_ONE_BY_ONE;
  }

  /** How many openings from one on differ each from the next. */
  private static int unlike(List<Length> openings, int from) {
    int end = from;
    while (end < openings.size() && alike(openings, end) == 1) {
      end++;
    }
    return end - from;
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
