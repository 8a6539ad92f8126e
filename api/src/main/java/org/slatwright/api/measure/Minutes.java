package org.slatwright.api.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * A time to work or to wait, in whole minutes.
 *
 * @param count zero or more
 */
public record Minutes(int count) implements Comparable<Minutes> {

  /** No time. */
  public static final Minutes ZERO = new Minutes(0);

  private static final int PER_HOUR = 60;

  /** Waits longer than this are told in whole hours. */
  private static final int HOURS_ALONE = 6 * PER_HOUR;

  public Minutes {
    if (count < 0) {
      throw new IllegalArgumentException("minutes must be >= 0, were " + count);
    }
  }

  /** So many hours. */
  public static Minutes hours(int hours) {
    return new Minutes(hours * PER_HOUR);
  }

  /** Both, one after the other. */
  public Minutes plus(Minutes other) {
    return new Minutes(count + other.count);
  }

  /** The longer one. */
  public static Minutes max(Minutes one, Minutes other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** For a person: {@code 25 min}, {@code 1 h 10 min}, {@code 24 h}. */
  public String words() {
    int rounded = count > HOURS_ALONE ? (count + PER_HOUR / 2) / PER_HOUR * PER_HOUR : count;
    List<String> words = new ArrayList<>();
    if (rounded >= PER_HOUR) {
      words.add(rounded / PER_HOUR + " h");
    }
    if (rounded % PER_HOUR > 0 || rounded == 0) {
      words.add(rounded % PER_HOUR + " min");
    }
    return String.join(" ", words);
  }

  @Override
  public int compareTo(Minutes other) {
    return Integer.compare(count, other.count);
  }
}
