package org.slatwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.slatwright.cli.plugin.Catalogue;
import org.slatwright.cli.plugin.Complaint;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where a command looks for exporters. */
final class PluginFolders {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--plugins",
      paramLabel = "DIR",
      description = {
        "Also takes exporters from the jars in this folder; those in the plugins folder of the"
            + " installation are always taken."
      })
  private List<String> folders = new ArrayList<>();

  /** What is found there; complaints go to standard error. */
  Catalogue catalogue(Session session) {
    List<Path> places = new ArrayList<>();
    session.plugins().filter(Files::isDirectory).ifPresent(places::add);
    for (String folder : folders) {
      Path place = session.resolve(folder);
      if (!Files.isDirectory(place)) {
        throw new ParameterException(
            command.commandLine(), "--plugins " + folder + " is not a folder");
      }
      places.add(place);
    }
    Catalogue catalogue = Catalogue.of(places);
    for (Complaint complaint : catalogue.complaints()) {
      session
          .err()
          .println("warning: " + complaint.origin() + " is left out: " + complaint.reason());
    }
    return catalogue;
  }
}
