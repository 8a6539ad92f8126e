package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.measure.Length;

/** Tells which heights were worked out, and from what. */
final class HeightNotes {

  private HeightNotes() {}

  static void tell(Worksheet sheet, HeightSizes sizes, Heights heights) {
    tellUpright(sheet, sizes, heights);
    tellFoot(sheet, sizes, heights);
    tellTop(sheet, sizes, heights);
    tellOpenings(sheet, sizes, heights);
  }

  private static void tellUpright(Worksheet sheet, HeightSizes sizes, Heights heights) {
    if (heights.upright().solved()) {
      boolean snapped = !sizes.sum().equals(heights.upright().length());
      sheet.note(
          "rack.upright",
          "the uprights are %s: all heights added up%s"
              .formatted(
                  sheet.show(heights.upright().length()),
                  snapped ? " and rounded up to the next " + sheet.show(sheet.increment()) : ""),
          "");
    }
  }

  private static void tellFoot(Worksheet sheet, HeightSizes sizes, Heights heights) {
    if (!heights.foot().solved()) {
      return;
    }
    Length foot = heights.foot().length();
    Length beyond = foot.minus(sizes.standardFoot());
    boolean standard = sizes.upright().isEmpty() || sizes.evens() > 0;
    String why = "what the other heights leave";
    if (standard) {
      why = beyond.isZero() ? "the usual" : "the usual and what rounding left over";
    }
    sheet.note(
        "rack.foot",
        "the foot clearance is " + sheet.show(foot) + ": " + why,
        "give rack.foot to set it");
  }

  private static void tellTop(Worksheet sheet, HeightSizes sizes, Heights heights) {
    Length top = heights.top().length();
    if (heights.top().solved() && top.isPositive()) {
      sheet.note(
          "rack.top",
          "the uprights run on %s above the top slats: what the other heights leave"
              .formatted(sheet.show(top)),
          "leave rack.foot out to have it at the foot instead");
    }
  }

  private static void tellOpenings(Worksheet sheet, HeightSizes sizes, Heights heights) {
    List<Length> evens = heights.evens();
    if (evens.isEmpty()) {
      return;
    }
    boolean alike = evens.stream().distinct().count() == 1;
    sheet.note(
        "rack.openings",
        "%s clear in %s%s"
            .formatted(
                sheet.showSpan(evens),
                evens.size() == 1
                    ? "the even opening"
                    : "each of " + evens.size() + " even openings",
                alike ? "" : ": what cannot be shared equally went to the lowest"),
        alike ? "" : "leave rack.foot or rack.top out to have it there instead");
  }
}
