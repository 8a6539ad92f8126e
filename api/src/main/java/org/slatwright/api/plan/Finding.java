package org.slatwright.api.plan;

/**
 * Something that the maker should know before the first cut.
 *
 * @param severity how bad
 * @param subject the part, joint or key it concerns: {@code slat S}, {@code timber.frame.lengths}
 * @param message what is the matter, with value, limit and units
 * @param advice what to change, as a number where there is one; or empty
 * @param source where the rule comes from; or empty
 */
public record Finding(
    Severity severity, String subject, String message, String advice, String source) {

  /** How bad, worst first. */
  public enum Severity {
    ERROR("error"),
    WARNING("warning"),
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
