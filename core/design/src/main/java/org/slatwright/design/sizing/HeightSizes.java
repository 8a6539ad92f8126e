package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;

/**
 * What is known of the heights before the chain is closed: foot + Σ over openings (rail height +
 * slat thickness + clear) + rail height + slat thickness + top = upright.
 *
 * @param shelf rail height + slat thickness
 * @param increment that solved lengths snap to
 * @param standardFoot the foot clearance where nothing else decides it
 * @param entries of the openings, from the floor up
 * @param top how far the uprights run on above the top slats; zero when given as flush
 */
record HeightSizes(
    Length shelf,
    Length increment,
    Length standardFoot,
    Optional<Length> upright,
    Optional<Length> foot,
    List<Entry> entries,
    Optional<Length> top) {

  /**
   * Openings that are alike.
   *
   * @param clear height, given or as a thing needs it; empty when even
   */
  record Entry(Optional<Sized> clear, int count) {

    static Entry even(int count) {
      return new Entry(Optional.empty(), count);
    }

    Length fixedHeight() {
      return clear.map(Sized::length).orElse(Length.ZERO).times(count);
    }
  }

  HeightSizes {
    entries = List.copyOf(entries);
  }

  HeightSizes withUpright(Length length) {
    return new HeightSizes(shelf, increment, standardFoot, Optional.of(length), foot, entries, top);
  }

  HeightSizes withoutUpright() {
    return new HeightSizes(shelf, increment, standardFoot, Optional.empty(), foot, entries, top);
  }

  HeightSizes withFoot(Length length) {
    return new HeightSizes(
        shelf, increment, standardFoot, upright, Optional.of(length), entries, top);
  }

  HeightSizes withTop(Length length) {
    return new HeightSizes(
        shelf, increment, standardFoot, upright, foot, entries, Optional.of(length));
  }

  HeightSizes withEntries(List<Entry> others) {
    return new HeightSizes(shelf, increment, standardFoot, upright, foot, others, top);
  }

  HeightSizes withEntry(int index, Entry other) {
    List<Entry> changed = new ArrayList<>(entries);
    changed.set(index, other);
    return withEntries(changed);
  }

  int openings() {
    return entries.stream().mapToInt(Entry::count).sum();
  }

  int evens() {
    return entries.stream().filter(e -> e.clear().isEmpty()).mapToInt(Entry::count).sum();
  }

  int shelves() {
    return openings() + 1;
  }

  /** The openings with a clear height of their own, added up. */
  Length fixedOpenings() {
    return entries.stream().map(Entry::fixedHeight).reduce(Length.ZERO, Length::plus);
  }

  /** The foot as given, or what is kept for it: nothing where it takes what remains. */
  Length reckonedFoot() {
    boolean takesRemainder = upright.isPresent() && evens() == 0;
    return foot.orElse(takesRemainder ? Length.ZERO : standardFoot);
  }

  /** Everything that has a height, added up. */
  Length sum() {
    return reckonedFoot()
        .plus(shelf.times(shelves()))
        .plus(fixedOpenings())
        .plus(top.orElse(Length.ZERO));
  }

  /** What the uprights have left over; negative when they are too short. */
  Length spare() {
    return upright.orElseThrow().minus(sum());
  }

  /** The heights when the chain closes, empty when these sizes cannot. */
  Optional<Heights> close() {
    if (upright.isEmpty()) {
      return evens() == 0 ? Optional.of(addedUp()) : Optional.empty();
    }
    return evens() == 0 ? withRemainder() : withEvens();
  }

  /** The sum decides the upright; only when foot or top is free can it snap to the increment. */
  private Heights addedUp() {
    Length sum = sum();
    boolean free = foot.isEmpty() || top.isEmpty();
    Length length = free ? sum.snappedUp(increment) : sum;
    return heights(Sized.solved(length), length.minus(sum), List.of());
  }

  private Optional<Heights> withRemainder() {
    boolean free = foot.isEmpty() || top.isEmpty();
    boolean closes = free ? !spare().isNegative() : spare().isZero();
    return closes
        ? Optional.of(heights(Sized.given(upright.orElseThrow()), spare(), List.of()))
        : Optional.empty();
  }

  private Optional<Heights> withEvens() {
    Length share = spare().dividedBy(evens()).snappedDown(increment);
    if (!share.isPositive()) {
      return Optional.empty();
    }
    Length rest = spare().minus(share.times(evens()));
    boolean free = foot.isEmpty() || top.isEmpty();
    List<Length> shares = free ? shares(share, Length.ZERO) : shares(share, rest);
    return Optional.of(
        heights(Sized.given(upright.orElseThrow()), free ? rest : Length.ZERO, shares));
  }

  /** Equal shares; the rest goes to the lowest, an increment each and what is less to the first. */
  private List<Length> shares(Length share, Length rest) {
    long wider = rest.wholeTimes(increment);
    List<Length> shares = new ArrayList<>();
    for (int i = 0; i < evens(); i++) {
      Length more = i < wider ? increment : Length.ZERO;
      Length crumb = i == 0 ? rest.minus(increment.times(wider)) : Length.ZERO;
      shares.add(share.plus(more).plus(crumb));
    }
    return shares;
  }

  /** With the remainder in the foot, or else the top. */
  private Heights heights(Sized uprightLength, Length remainder, List<Length> shares) {
    Length above = foot.isPresent() ? remainder : Length.ZERO;
    return new Heights(
        uprightLength,
        Sized.of(foot, reckonedFoot().plus(remainder)),
        clears(shares),
        shares,
        Sized.of(top, above));
  }

  private List<Sized> clears(List<Length> shares) {
    var left = shares.iterator();
    return entries.stream()
        .flatMap(entry -> Stream.generate(entry::clear).limit(entry.count()))
        .map(clear -> clear.orElseGet(() -> Sized.solved(left.next())))
        .toList();
  }
}
