package org.slatwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.slatwright.cli.output.OutputException;
import org.slatwright.cli.output.PlanFolders;
import org.slatwright.cli.plugin.Catalogue;
import org.slatwright.cli.sizes.SizesTable;
import org.slatwright.cli.sizes.TableException;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code slatwright sizes}. */
@Command(
    name = "sizes",
    mixinStandardHelpOptions = true,
    customSynopsis = {
      "Usage: slatwright sizes RACK --table=FILE --into=DIR [--to=FORMAT,...]",
      "         [--replace] [--set=KEY=VALUE]... [--option=FORMAT.NAME=VALUE]...",
      "         [--plugins=DIR]...",
    },
    synopsisHeading = "",
    description = {
      "Writes one plan for each row of a table of sizes, each into a folder of its own. Prints"
          + " each folder written.",
      "The first row of the table names a key of the rack file above each column, as --set takes"
          + " it; a cell that is empty leaves the key as it is. A first column 'name' names the"
          + " folders; without it they are numbered: 0001, 0002, …",
      "A row that is wrong is told with its line, and the others are still written. Each folder"
          + " appears whole or not at all."
    })
final class SizesCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec;

  @Mixin private RackInput rack;

  @Option(
      names = "--table",
      paramLabel = "FILE",
      required = true,
      description = "The table: CSV in UTF-8, with commas, semicolons or tabs.")
  private String table;

  @Option(
      names = "--into",
      paramLabel = "DIR",
      required = true,
      description = "The folder for the plans' folders, made when it is not there.")
  private String into;

  @Option(
      names = "--replace",
      description = {
        "Writes over the files of plans that exist. Deletes nothing: what is left of an older plan"
            + " is told."
      })
  private boolean replace;

  @Mixin private FormatChoice formats;

  @Mixin private PluginFolders plugins;

  SizesCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws Refusal {
    requireFolder();
    try (Catalogue catalogue = plugins.catalogue(session)) {
      Selection selection = formats.from(catalogue);
      RackText text = readable(rack.text(session));
      return write(text, selection).code();
    }
  }

  private void requireFolder() {
    if (into.isBlank()) {
      throw new ParameterException(spec.commandLine(), "--into names no folder");
    }
  }

  /** What is wrong with the file itself is told once, not once a row. */
  private static RackText readable(RackText text) throws Refusal {
    try {
      text.read(List.of());
      return text;
    } catch (RackFileException e) {
      throw new Refusal(ExitStatus.RACK_WRONG, text.complaint(e));
    }
  }

  private ExitStatus write(RackText text, Selection selection) throws Refusal {
    Path file = session.resolve(table);
    try (SizesTable sizes = SizesTable.open(Files.newInputStream(file), RackFileSchema.keys());
        PlanFolders folders = new PlanFolders(session.resolve(into), replace)) {
      tellChanges(text, sizes);
      SizesRun run = new SizesRun(session, table, new RowPlan(text, selection, folders));
      ExitStatus status = run.all(sizes);
      session.out().println(run.summary(into));
      return status;
    } catch (TableException e) {
      throw new Refusal(ExitStatus.RACK_WRONG, SizesRun.complaint(table, e));
    } catch (OutputException e) {
      throw new Refusal(ExitStatus.NOT_WRITTEN, "error: " + e.getMessage());
    } catch (IOException e) {
      throw new Refusal(
          ExitStatus.RACK_WRONG, table + ": error: cannot be read: " + OutputException.reason(e));
    }
  }

  private void tellChanges(RackText text, SizesTable sizes) {
    text.notes().forEach(session::note);
    Changes changes = text.changes();
    for (String key : sizes.keys()) {
      session.note(key + " of " + table + changes.before(key));
    }
  }
}
