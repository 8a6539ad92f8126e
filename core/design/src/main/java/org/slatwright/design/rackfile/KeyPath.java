package org.slatwright.design.rackfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The way to a value: {@code rack.openings[1].clear}. Entries of a list count from 0.
 *
 * @param steps from the outermost, at least one, the first a key
 */
record KeyPath(List<Step> steps) {

  private static final String NAME = "[^.\\[\\]\\s]+";
  private static final String INDEX = "\\[\\d{1,5}]";
  private static final Pattern WHOLE = Pattern.compile(NAME + "(?:\\." + NAME + "|" + INDEX + ")*");
  private static final Pattern STEP = Pattern.compile("(" + NAME + ")|\\[(\\d+)]");

  KeyPath {
    steps = List.copyOf(steps);
  }

  /** One step inwards. */
  sealed interface Step {
    /** To the value of a key. */
    record Key(String name) implements Step {}

    /** To an entry of a list. */
    record Index(int index) implements Step {}
  }

  /** The path that {@code text} spells, or empty when it spells none. */
  static Optional<KeyPath> of(String text) {
    if (!WHOLE.matcher(text).matches()) {
      return Optional.empty();
    }
    List<Step> steps = new ArrayList<>();
    Matcher matcher = STEP.matcher(text);
    while (matcher.find()) {
      String name = matcher.group(1);
      steps.add(
          name != null ? new Step.Key(name) : new Step.Index(Integer.parseInt(matcher.group(2))));
    }
    return Optional.of(new KeyPath(steps));
  }
}
