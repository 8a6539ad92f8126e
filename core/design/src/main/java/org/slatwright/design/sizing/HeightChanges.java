package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
  private final List<Heights> results = new ArrayList<>();
  private final List<Problem.Change> changes = new ArrayList<>();

  HeightChanges(Worksheet sheet, HeightSizes sizes) {
    this.sheet = sheet;
    this.sizes = sizes;
    this.tooLong = sizes.spare().negated();
  }

  /** Sizes first, then openings, then the number of shelves. */
  List<Problem.Change> proposed() {
    if (sizes.evens() == 0) {
      tryUpright();
      tryFoot();
      tryTop();
    }
    for (int i = 0; i < sizes.entries().size(); i++) {
      tryEntry(i);
    }
    if (sizes.entries().size() > 1) {
      tryEvens(sizes.openings(), "all ");
    }
    tryEvens(sizes.openings() - 1, "one shelf less: ");
    tryEvens(sizes.openings() + 1, "one shelf more: ");
    return changes;
  }

  private void tryUpright() {
    Length standard = sizes.foot().isPresent() ? Length.ZERO : sizes.standardFoot();
    Length length = sizes.upright().orElseThrow().plus(tooLong).plus(standard);
    if (canBeCut(length)) {
      propose(
          sizes.withUpright(length),
          "rack.upright=" + sheet.spell(length),
          heights -> "uprights of " + sheet.show(length));
    }
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
    if (entry.clear().isEmpty()) {
      return;
    }
    String key = opening(index).clear().key();
    String which = which(index);
    Length given = entry.clear().get();
    Length share = tooLong.dividedBy(entry.count());
    Length clear = given.minus(share);
    if (sizes.evens() == 0 && share.times(entry.count()).equals(tooLong) && canBeCut(clear)) {
      propose(
          sizes.withEntry(index, new HeightSizes.Entry(Optional.of(clear), entry.count())),
          key + "=" + sheet.spell(clear),
          heights -> which + " of " + sheet.show(clear) + " instead of " + sheet.show(given));
    }
    propose(
        sizes.withEntry(index, HeightSizes.Entry.even(entry.count())),
        key + "=even",
        heights -> which + " even: " + sheet.showSpan(solved(heights)) + " clear");
  }

  private void tryEvens(int count, String words) {
    if (count < 1 || count > MOST_OPENINGS) {
      return;
    }
    propose(
        sizes.withEntries(List.of(HeightSizes.Entry.even(count))),
        "rack.openings=[{clear: even, count: " + count + "}]",
        heights ->
            "%s%d even opening%s of %s clear"
                .formatted(words, count, count == 1 ? "" : "s", sheet.showSpan(solved(heights))));
  }

  private void propose(HeightSizes changed, String setting, Function<Heights, String> words) {
    Optional<Heights> closed =
        changed.close().filter(heights -> results.stream().noneMatch(heights::measuresLike));
    closed.ifPresent(
        heights -> {
          results.add(heights);
          changes.add(new Problem.Change(setting, words.apply(heights)));
        });
  }

  private static List<Length> solved(Heights heights) {
    return heights.clears().stream().filter(Sized::solved).map(Sized::length).toList();
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
