package org.slatwright.design.drafting;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slatwright.api.plan.Finding;

/** Reads from a finding, which is in words, whether its value keeps within its limit. */
final class Margin {

  private static final String NUMBER = "(\\d+/\\d+|\\d+(?:\\.\\d+)?(?: \\d+/\\d+)?)";
  private static final String UNIT = "( ?[^\\d\\s,]+)?";

  private static final Pattern VALUE = Pattern.compile(NUMBER + UNIT + ".*");
  private static final Pattern LIMIT =
      Pattern.compile("(at least|more than|at most|below|.*\\bbelow) " + NUMBER + UNIT + ".*");
  private static final Pattern RANGE =
      Pattern.compile(
          "(usually|not between) " + NUMBER + UNIT + " (?:to|and) " + NUMBER + UNIT + ".*");

  private Margin() {}

  /** Whether the value is beyond the limit; not when either has no number in it that is known. */
  static boolean isMissed(Finding finding) {
    Matcher value = VALUE.matcher(finding.value());
    if (!value.matches()) {
      return false;
    }
    double number = number(value.group(1));
    Matcher range = RANGE.matcher(finding.limit());
    if (range.matches()) {
      boolean within = number >= number(range.group(2)) && number <= number(range.group(4));
      return isSame(value.group(2), range.group(5)) && within != range.group(1).equals("usually");
    }
    Matcher limit = LIMIT.matcher(finding.limit());
    return limit.matches()
        && isSame(value.group(2), limit.group(3))
        && isMissed(number, limit.group(1), number(limit.group(2)));
  }

  /** A limit of nothing needs no unit. */
  private static boolean isSame(String unit, String ofLimit) {
    return ofLimit == null || ofLimit.equals(unit);
  }

  private static boolean isMissed(double value, String kind, double limit) {
    return switch (kind) {
      case "at least" -> value < limit;
      case "more than" -> value <= limit;
      case "at most" -> value > limit;
      default -> value >= limit;
    };
  }

  /** {@code 1.5}, {@code 1/2} or {@code 1 1/2}. */
  private static double number(String text) {
    double sum = 0;
    for (String term : text.split(" ")) {
      String[] parts = term.split("/");
      sum += Double.parseDouble(parts[0]) / (parts.length == 1 ? 1 : Double.parseDouble(parts[1]));
    }
    return sum;
  }
}
