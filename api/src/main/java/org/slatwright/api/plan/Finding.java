package org.slatwright.api.plan;

/**
 * Something that the maker should know before the first cut. Where a rule compares two numbers,
 * they stand in {@code value} and {@code limit}, so that a reader says {@code message: value,
 * limit}.
 *
 * @param severity how bad
 * @param rule the short name of the rule that found it, the same whatever it finds: {@code
 *     slat-sag}
 * @param subject the part, joint or key it concerns: {@code slat S}, {@code timber.frame.lengths}
 * @param message what is the matter, in words
 * @param value what was reckoned, with its unit: {@code 3.2 mm}; or empty
 * @param limit what it should be, with its unit and which way: {@code at most 2.9 mm}; or empty
 * @param advice what to change, as a number where there is one; or empty
 * @param source where the rule comes from; or empty
 */
public record Finding(
    Severity severity,
    String rule,
    String subject,
    String message,
    String value,
    String limit,
    String advice,
    String source) {

  /** How bad, worst first. */
  public enum Severity {
    /** It cannot be built so, or fails or harms under the load it is meant for. */
    ERROR("error"),
    /** It can be built, but should be changed. */
    WARNING("warning"),
    /** To know; nothing needs to change. */
    NOTE("note");

    private final String word;

    Severity(String word) {
      this.word = word;
    }

    /** As written in a list of findings. */
    public String word() {
      return word;
    }
  }
}
