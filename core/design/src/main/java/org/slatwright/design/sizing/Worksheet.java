package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;

/**
 * A rack file while it is being solved, with the problems and notes that come up on the way, so
 * that one run tells them all.
 */
final class Worksheet {

  private static final Comparator<Place> FILE_ORDER =
      Comparator.comparingInt((Place p) -> p.line() == 0 ? Integer.MAX_VALUE : p.line())
          .thenComparingInt(Place::column);

  private final RackFile file;
  private final LengthFormat format;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Finding> notes = new ArrayList<>();

  Worksheet(RackFile file) {
    this.file = file;
    this.format = new LengthFormat(file.units(), file.feetAbove());
  }

  RackFile file() {
    return file;
  }

  Length increment() {
    return file.increment();
  }

  /** The metric size in a millimetre file, the inch size in an inch file. */
  <T> T metricOrInch(T metric, T inch) {
    return file.units().metricOrInch(metric, inch);
  }

  /** A length for a person, with its unit. */
  String show(Length length) {
    return format.withUnit(length);
  }

  /** One length, or from the shortest to the longest where they differ. */
  String showSpan(List<Length> lengths) {
    Length shortest = lengths.stream().min(Comparator.naturalOrder()).orElseThrow();
    Length longest = lengths.stream().max(Comparator.naturalOrder()).orElseThrow();
    return shortest.equals(longest)
        ? show(longest)
        : format.number(shortest) + " to " + show(longest);
  }

  /** What to add where a length was rounded up to the increment; nothing where it was not. */
  String rounding(Length exact) {
    return exact.isMultipleOf(increment()) ? "" : ", rounded up to the next " + show(increment());
  }

  /** A length as {@code --set} reads it back. */
  String spell(Length length) {
    return new Spelling(file.units()).length(length);
  }

  /** Two lengths of a range or a section, both in the same unit. */
  String spell(Length first, String between, Length second) {
    return new Spelling(file.units()).pair(first, between, second);
  }

  /** A change of one key to a length. */
  Problem.Change change(String key, Length value, String words) {
    return new Problem.Change(key + "=" + spell(value), words);
  }

  /** Where a key stands; where it was left out, the nearest key above it, or else the title. */
  Place place(String key) {
    for (String at = key; !at.isEmpty(); at = parent(at)) {
      if (file.keys().containsKey(at)) {
        return file.keys().get(at);
      }
    }
    return file.title().place();
  }

  private static String parent(String key) {
    return key.substring(0, Math.max(0, key.lastIndexOf('.')));
  }

  /** Notes a problem; always empty, so that a rule can end with it. */
  <T> Optional<T> complain(Place place, String message, List<Problem.Change> changes) {
    problems.add(new Problem(place, message, changes));
    return Optional.empty();
  }

  /** Notes a problem with the changes that there are, or none. */
  <T> Optional<T> complain(Place place, String message, Problem.Change... changes) {
    return complain(place, message, Arrays.asList(changes));
  }

  /** Tells the maker what was decided without asking, and why. */
  void note(String subject, String message, String advice) {
    notes.add(finding(Finding.Severity.NOTE, subject, message, advice));
  }

  /** Tells the maker what was decided without asking, although it is not as it should be. */
  void warn(String subject, String message, String advice) {
    notes.add(finding(Finding.Severity.WARNING, subject, message, advice));
  }

  /** Tells the maker what another rule found. */
  void tell(Finding finding) {
    notes.add(finding);
  }

  private static Finding finding(
      Finding.Severity severity, String subject, String message, String advice) {
    return new Finding(severity, "sizing", subject, message, "", "", advice, "");
  }

  /** What came up, in the order of the file; settings of the command line last. */
  List<Problem> problems() {
    return problems.stream().sorted(Comparator.comparing(Problem::place, FILE_ORDER)).toList();
  }

  List<Finding> notes() {
    return List.copyOf(notes);
  }
}
