package org.slatwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.cli.output.OutputException;
import org.slatwright.cli.output.OutputFolder;
import org.slatwright.cli.plugin.Catalogue;
import org.slatwright.cli.plugin.Failure;
import org.slatwright.cli.plugin.Listed;

/** The exporters that one command runs, each with a value for its options. */
final class Selection {

  /** The word for every format there is. */
  static final String ALL = "all";

  private final List<Chosen> chosen;

  private record Chosen(Listed listed, OptionValues options) {}

  private Selection(List<Chosen> chosen) {
    this.chosen = List.copyOf(chosen);
  }

  /**
   * What {@code --to} and {@code --option} ask for.
   *
   * @throws IllegalArgumentException when there is no such format, option or value; the message
   *     names what was perhaps meant
   */
  static Selection of(Catalogue catalogue, List<String> formats, List<String> options) {
    Map<String, Map<String, String>> given = new TreeMap<>();
    for (String text : options) {
      OptionSetting setting = OptionSetting.read(text);
      Listed listed = find(catalogue, setting.format());
      setting.requireOfferedBy(listed);
      given
          .computeIfAbsent(setting.format(), format -> new TreeMap<>())
          .put(setting.name(), setting.value());
    }
    List<Chosen> chosen = new ArrayList<>();
    for (Listed listed : wanted(catalogue, formats)) {
      Map<String, String> own = given.getOrDefault(listed.format(), Map.of());
      chosen.add(new Chosen(listed, OptionValues.of(listed.options(), own)));
    }
    return new Selection(chosen);
  }

  /**
   * Writes the plan in every format chosen.
   *
   * @return a line for each exporter that failed; none of its files are kept
   * @throws OutputException when the disk failed, which is nobody's fault
   */
  List<String> export(Plan plan, OutputFolder output) throws OutputException {
    List<String> failures = new ArrayList<>();
    for (Chosen one : chosen) {
      export(plan, one, output.batch()).ifPresent(failures::add);
    }
    return failures;
  }

  /** An exporter may be anyone's: whatever it throws costs its own format and no more. */
  private static Optional<String> export(Plan plan, Chosen one, OutputFolder.Batch files)
      throws OutputException {
    Thread thread = Thread.currentThread();
    ClassLoader usual = thread.getContextClassLoader();
    try {
      thread.setContextClassLoader(one.listed().exporter().getClass().getClassLoader());
      one.listed().exporter().export(plan, one.options(), files);
    } catch (Throwable e) {
      files.requireWritable();
      return Optional.of(
          "%s (%s) was not written: %s"
              .formatted(one.listed().format(), one.listed().origin(), reason(one, e)));
    } finally {
      thread.setContextClassLoader(usual);
    }
    files.keep();
    return Optional.empty();
  }

  /** What an exporter says to the maker stands alone; of anything else its author is to know. */
  private static String reason(Chosen one, Throwable thrown) {
    String reason = Failure.reason(thrown);
    return thrown instanceof ExportException
        ? reason
        : "exporter %s failed: %s".formatted(one.listed().exporter().getClass().getName(), reason);
  }

  private static Set<Listed> wanted(Catalogue catalogue, List<String> formats) {
    if (formats.isEmpty()) { // --to with nothing but commas
      throw new IllegalArgumentException("--to names no format");
    }
    Set<Listed> wanted = new LinkedHashSet<>();
    for (String format : formats) {
      if (format.equals(ALL)) {
        wanted.addAll(catalogue.exporters());
      } else {
        wanted.add(find(catalogue, format));
      }
    }
    return wanted;
  }

  private static Listed find(Catalogue catalogue, String format) {
    return catalogue
        .exporter(format)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    Unknown.message(
                        "there is no format",
                        format,
                        catalogue.exporters().stream().map(Listed::format).toList())));
  }
}
