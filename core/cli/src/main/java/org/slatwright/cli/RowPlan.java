package org.slatwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;
import org.slatwright.cli.output.OutputException;
import org.slatwright.cli.output.OutputFolder;
import org.slatwright.cli.output.PlanFolders;
import org.slatwright.cli.sizes.SizesRow;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFileException;

/** Makes the plan of one row of a table and writes it. */
record RowPlan(RackText rack, Selection selection, PlanFolders folders) {

  private static final String SET = "--set ";

  /**
   * What came of a row.
   *
   * @param folder of the plan, when it was written
   * @param leftovers files among those of the plan that were not written with it
   * @param complaints each to be told with the row's place
   * @param warned whether the plan has warnings
   */
  record Outcome(
      ExitStatus status,
      Optional<Path> folder,
      List<Path> leftovers,
      List<String> complaints,
      boolean warned) {

    private static Outcome failed(ExitStatus status, List<String> complaints) {
      return new Outcome(status, Optional.empty(), List.of(), complaints, false);
    }
  }

  /** Never throws: what goes wrong with one row is no other row's fault. */
  Outcome of(SizesRow row) {
    if (!row.faults().isEmpty()) {
      return Outcome.failed(ExitStatus.RACK_WRONG, row.faults());
    }
    try {
      Plan plan = rack.plan(row.settings());
      PlanFolders.Written written = folders.write(row.folder(), output -> write(plan, output));
      return new Outcome(
          ExitStatus.of(plan),
          Optional.of(written.folder()),
          written.leftovers(),
          errors(plan),
          has(plan, Finding.Severity.WARNING));
    } catch (RackFileException e) {
      return Outcome.failed(
          ExitStatus.RACK_WRONG, e.problems().stream().map(RowPlan::complaint).toList());
    } catch (OutputException e) {
      return Outcome.failed(ExitStatus.NOT_WRITTEN, List.of(e.getMessage()));
    } catch (RuntimeException | Error e) {
      return Outcome.failed(
          ExitStatus.NOT_WRITTEN,
          List.of("slatwright itself is at fault, please report this: " + Fault.of(e)));
    }
  }

  /** A plan that lacks a format is not whole. */
  private void write(Plan plan, OutputFolder output) throws OutputException {
    List<String> failures = selection.export(plan, output);
    if (!failures.isEmpty()) {
      throw new OutputException(String.join("; ", failures));
    }
  }

  private static List<String> errors(Plan plan) {
    return plan.findings().stream()
        .filter(finding -> finding.severity() == Finding.Severity.ERROR)
        .map(FindingText::head)
        .toList();
  }

  private static boolean has(Plan plan, Finding.Severity severity) {
    return plan.findings().stream().anyMatch(finding -> finding.severity() == severity);
  }

  /** The message, and below it the changes that would help, as the cells of a row. */
  private static String complaint(Problem problem) {
    String place = problem.place().toString();
    List<String> lines = new ArrayList<>();
    lines.add(
        (place.startsWith(SET) ? place.substring(SET.length()) : place) + ": " + problem.message());
    lines.addAll(ChangeText.of(problem.changes(), UnaryOperator.identity()));
    return String.join("\n", lines);
  }
}
