package org.slatwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;
import org.slatwright.cli.output.OutputException;
import org.slatwright.cli.output.OutputFolder;
import org.slatwright.cli.plugin.Catalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code slatwright export}. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    customSynopsis = {
      "Usage: slatwright export RACK [--to=FORMAT,...] [--into=DIR] [--replace]",
      "         [--set=KEY=VALUE]... [--option=FORMAT.NAME=VALUE]... [--plugins=DIR]...",
    },
    synopsisHeading = "",
    description = {
      "Writes the plan of a rack: drawings, jig, cut list and more. Prints each file written.",
      "Nothing that exists is overwritten without --replace, and a file appears whole or not at"
          + " all. When the design has errors the files are written to look at, and the status"
          + " is 1."
    })
final class ExportCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec;

  @Mixin private RackInput rack;

  @Option(
      names = "--into",
      paramLabel = "DIR",
      description = {
        "The folder to write into, made when it is not there. When left out: trays-plan for"
            + " trays.yaml, in the working directory."
      })
  private String into;

  @Option(
      names = "--replace",
      description = {
        "Writes over files that exist. Deletes nothing: what is left of an older plan is told."
      })
  private boolean replace;

  @Mixin private FormatChoice formats;

  @Mixin private PluginFolders plugins;

  ExportCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws Refusal {
    requireFolder();
    try (Catalogue catalogue = plugins.catalogue(session)) {
      Selection selection = formats.from(catalogue);
      Plan plan = rack.plan(session);
      tellFindings(plan);
      return (write(plan, selection) ? ExitStatus.of(plan) : ExitStatus.NOT_WRITTEN).code();
    }
  }

  private void requireFolder() {
    if (into != null && into.isBlank()) {
      throw new ParameterException(
          spec.commandLine(), "--into names no folder; leave it out for the usual one");
    }
  }

  /** Notes are for {@code check}. */
  private void tellFindings(Plan plan) {
    FindingText.of(
            plan.findings().stream()
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .toList())
        .forEach(session.err()::println);
  }

  /** Whether every format was written. */
  private boolean write(Plan plan, Selection selection) throws Refusal {
    String folder = into == null ? rack.name() + "-plan" : into;
    try (OutputFolder output = new OutputFolder(session.resolve(folder), replace)) {
      List<String> failures = selection.export(plan, output);
      failures.forEach(failure -> session.err().println("error: " + failure));
      output.publish(session.out()::println);
      if (replace) {
        LeftoverText.of(output.leftovers()).ifPresent(session.err()::println);
      }
      return failures.isEmpty();
    } catch (OutputException e) {
      throw new Refusal(ExitStatus.NOT_WRITTEN, "error: " + e.getMessage());
    }
  }
}
