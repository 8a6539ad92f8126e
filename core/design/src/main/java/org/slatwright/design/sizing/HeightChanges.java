package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;

/**
 * Each single change that would close a height chain. Every one is tried before it is proposed, so
 * none is named that would not do; sizes that are no multiple of the increment are not named
 * either.
 */
final class HeightChanges {

  /** As many as a rack file may have. */
  private static final int MOST_OPENINGS = 99;

  private final Worksheet sheet;
  private final HeightSizes sizes;
  private final Length tooLong;
  private final Length leastClear;
  private final List<Heights> results = new ArrayList<>();
  private final List<Problem.Change> changes = new ArrayList<>();

  HeightChanges(Worksheet sheet, HeightSizes sizes) {
    this.sheet = sheet;
    this.sizes = sizes;
    this.tooLong = sizes.spare().negated();
    this.leastClear = leastClear();
  }

  /** Sizes first, then openings, then the number of shelves. */
  List<Problem.Change> proposed() {
    if (sizes.evens() > 0) {
      tryUprightForThings();
    } else {
      tryUpright();
      tryFoot();
      tryTop();
    }
    for (int i = 0; i < sizes.entries().size(); i++) {
      tryEntry(i);
      tryFewer(i);
    }
    if (sizes.entries().size() > 1) {
      tryEvens(sizes.openings(), "all ");
    }
    tryFewerShelves();
    tryEvens(sizes.openings() + 1, "one shelf more: ");
    return changes;
  }

  /** Uprights as long as the sum; rounded up where foot or top can take the rest. */
  private void tryUpright() {
    Length sum = sizes.withoutUpright().close().orElseThrow().upright().length();
    if (canBeCut(sum)) {
      tryUpright(sum);
    }
  }

  /** Beside openings for things, with even ones as high as the lowest of those. */
  private void tryUprightForThings() {
    sizes.entries().stream()
        .flatMap(entry -> entry.clear().stream())
        .filter(Sized::solved)
        .map(Sized::length)
        .reduce(Length::min)
        .map(lowest -> sizes.sum().plus(lowest.times(sizes.evens())))
        .ifPresent(sum -> tryUpright(sum.snappedUp(sheet.increment())));
  }

  private void tryUpright(Length length) {
    propose(
        sizes.withUpright(length),
        "rack.upright=" + sheet.spell(length),
        heights -> "uprights of " + sheet.show(length));
  }

  private void tryFoot() {
    Optional<Length> foot = sizes.foot().map(given -> given.minus(tooLong));
    if (foot.filter(this::canBeSet).isPresent()) {
      propose(
          sizes.withFoot(foot.get()),
          "rack.foot=" + sheet.spell(foot.get()),
          heights -> "a foot clearance of " + sheet.show(foot.get()));
    }
  }

  private void tryTop() {
    Length top = sizes.top().orElse(Length.ZERO).minus(tooLong);
    if (sizes.top().isPresent() && canBeSet(top)) {
      String words =
          top.isZero()
              ? "top slats flush with the uprights"
              : "uprights running on " + sheet.show(top) + " above the top slats";
      String value = top.isZero() ? "flush" : sheet.spell(top);
      propose(sizes.withTop(top), "rack.top=" + value, heights -> words);
    }
  }

  private void tryEntry(int index) {
    HeightSizes.Entry entry = sizes.entries().get(index);
    if (entry.clear().isEmpty() || entry.clear().get().solved()) {
      return;
    }
    String key = opening(index).clear().key();
    String which = which(index);
    Length given = entry.clear().get().length();
    Length share = tooLong.dividedBy(entry.count());
    Length clear = given.minus(share);
    boolean sharesOut = sizes.evens() == 0 && share.times(entry.count()).equals(tooLong);
    if (sharesOut && canBeCut(clear) && !clear.isLessThan(leastClear)) {
      propose(
          sizes.withEntry(
              index, new HeightSizes.Entry(Optional.of(Sized.given(clear)), entry.count())),
          key + "=" + sheet.spell(clear),
          heights -> which + " of " + sheet.show(clear) + " instead of " + sheet.show(given));
    }
    propose(
        sizes.withEntry(index, HeightSizes.Entry.even(entry.count())),
        key + "=even",
        heights -> which + " even: " + sheet.showSpan(heights.evens()) + " clear");
  }

  /** As many openings for a thing as there is height for, where there are several in one entry. */
  private void tryFewer(int index) {
    HeightSizes.Entry entry = sizes.entries().get(index);
    if (entry.count() > 1 && opening(index).clear().value() instanceof RackFile.Clear.For named) {
      IntStream.iterate(entry.count() - 1, count -> count > 0, count -> count - 1)
          .filter(
              count ->
                  propose(
                      sizes.withEntry(index, new HeightSizes.Entry(entry.clear(), count)),
                      "rack.openings[%s].count=%s".formatted(index, count),
                      heights ->
                          "%s opening%s for %s instead of %s"
                              .formatted(
                                  count,
                                  count == 1 ? "" : "s",
                                  named.thing().name(),
                                  entry.count())))
          .findFirst();
    }
  }

  /** One shelf less, or as many fewer as it takes. */
  private void tryFewerShelves() {
    for (int fewer = 1; fewer < sizes.openings(); fewer++) {
      String words = fewer == 1 ? "one shelf less: " : fewer + " shelves fewer: ";
      if (tryEvens(sizes.openings() - fewer, words)) {
        return;
      }
    }
  }

  private boolean tryEvens(int count, String words) {
    return count >= 1
        && count <= MOST_OPENINGS
        && propose(
            sizes.withEntries(List.of(HeightSizes.Entry.even(count))),
            "rack.openings=[{clear: even, count: " + count + "}]",
            heights ->
                "%s%s even opening%s of %s clear"
                    .formatted(
                        words, count, count == 1 ? "" : "s", sheet.showSpan(heights.evens())));
  }

  /** False when the sizes still do not close, or only with what is of no use. */
  private boolean propose(HeightSizes changed, String setting, Function<Heights, String> words) {
    Optional<Heights> closed = changed.close().filter(this::isSensible);
    closed
        .filter(heights -> results.stream().noneMatch(heights::measuresLike))
        .ifPresent(
            heights -> {
              results.add(heights);
              changes.add(new Problem.Change(setting, words.apply(heights)));
            });
    return closed.isPresent();
  }

  /** Openings that take something, between uprights that the stock gives. */
  private boolean isSensible(Heights heights) {
    return heights.evens().stream().noneMatch(leastClear::isMoreThan)
        && new LongestStock(sheet).holdsUpright(heights.upright().length());
  }

  /** As low as the lowest that the maker gave, and else high enough for a hand. */
  private Length leastClear() {
    return sizes.entries().stream()
        .flatMap(entry -> entry.clear().stream())
        .map(Sized::length)
        .reduce(sheet.metricOrInch(Length.mm(50), Length.inches(2, 1)), Length::min);
  }

  private boolean canBeCut(Length length) {
    return length.isPositive() && length.isMultipleOf(sheet.increment());
  }

  private boolean canBeSet(Length length) {
    return !length.isNegative() && length.isMultipleOf(sheet.increment());
  }

  private RackFile.Opening opening(int index) {
    return sheet.file().rack().openings().map(Given::value).orElseThrow().get(index);
  }

  /** {@code opening 1}, or {@code openings 2 to 4}, counted from the floor up. */
  private String which(int index) {
    int below = sizes.entries().subList(0, index).stream().mapToInt(HeightSizes.Entry::count).sum();
    int count = sizes.entries().get(index).count();
    return count == 1
        ? "opening " + (below + 1)
        : "openings " + (below + 1) + " to " + (below + count);
  }
}
