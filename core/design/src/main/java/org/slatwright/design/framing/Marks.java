package org.slatwright.design.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Marks in a row, as one says them: {@code F1 to F3, F7}. */
public final class Marks {

  private static final Pattern NUMBERED = Pattern.compile("(\\D*)(\\d{1,9})");
  private static final int LEAST = 3;

  private Marks() {}

  /** In their order; three or more that count on by one are said by the first and the last. */
  public static String of(List<String> marks) {
    List<String> said = new ArrayList<>();
    for (int i = 0; i < marks.size(); ) {
      int end = i + 1;
      while (end < marks.size() && follows(marks.get(end - 1), marks.get(end))) {
        end++;
      }
      if (end - i >= LEAST) {
        said.add(marks.get(i) + " to " + marks.get(end - 1));
        i = end;
      } else {
        said.add(marks.get(i));
        i++;
      }
    }
    return String.join(", ", said);
  }

  private static boolean follows(String mark, String next) {
    Matcher one = NUMBERED.matcher(mark);
    Matcher other = NUMBERED.matcher(next);
    return one.matches()
        && other.matches()
        && one.group(1).equals(other.group(1))
        && Integer.parseInt(one.group(2)) + 1 == Integer.parseInt(other.group(2));
  }
}
