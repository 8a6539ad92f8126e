package org.slatwright.design.checks;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/** What an advice says to set. */
final class Advice {

  private static final Pattern SETTING =
      Pattern.compile("[a-z][a-z-]*(?:\\.[a-z][a-z-]*)+=[^\\s,;]*[^\\s,;.]");

  private Advice() {}

  /** The changes that an advice offers, each alone enough; each of one setting or several. */
  static List<List<String>> changes(Finding finding) {
    return Stream.of(finding.advice().split("\\bor\\b"))
        .map(change -> SETTING.matcher(change).results().map(MatchResult::group).toList())
        .filter(settings -> !settings.isEmpty())
        .toList();
  }

  static List<String> joined(List<String> settings, List<String> more) {
    return Stream.concat(settings.stream(), more.stream()).toList();
  }
}
