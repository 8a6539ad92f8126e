package org.slatwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.plan.Plan;
import org.slatwright.cli.output.OutputException;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The rack that a command is about: its file, and what the maker changes in it. */
final class RackInput {

  private static final String STANDARD_INPUT = "-";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Parameters(paramLabel = "RACK", description = "The rack file (YAML); - reads standard input.")
  private String rack;

  @Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      description = {
        "Changes one key of the rack file. May be repeated.",
        "  rack.upright=1400  rack.openings[1].clear=even",
        "An empty value leaves the key out: rack.foot="
      })
  private List<String> settings = new ArrayList<>();

  /** The name for what is made of it: the file's, without its ending. */
  String name() {
    if (rack.equals(STANDARD_INPUT)) {
      return "rack";
    }
    String file = Path.of(rack).getFileName().toString();
    int dot = file.lastIndexOf('.');
    return dot > 0 ? file.substring(0, dot) : file;
  }

  /**
   * The plan of it; what the settings take the place of is told.
   *
   * @throws Refusal when it cannot be read, or something is wrong with it
   * @throws ParameterException when a setting has not the form of one
   */
  Plan plan(Session session) throws Refusal {
    return plan(session, Planner::plan);
  }

  /**
   * The same without drawings.
   *
   * @throws Refusal as {@link #plan(Session)} does
   * @throws ParameterException as {@link #plan(Session)} does
   */
  Plan undrawn(Session session) throws Refusal {
    return plan(session, Planner::undrawn);
  }

  /** Makes a plan of a rack file. */
  private interface Planning {
    Plan of(RackFile file) throws RackFileException;
  }

  private Plan plan(Session session, Planning planning) throws Refusal {
    RackText text = text(session);
    try {
      Plan plan = planning.of(text.read(List.of()));
      text.notes().forEach(session::note);
      return plan;
    } catch (RackFileException e) {
      throw new Refusal(ExitStatus.RACK_WRONG, text.complaint(e));
    }
  }

  /**
   * Its text.
   *
   * @throws Refusal when it cannot be read
   * @throws ParameterException when a setting has not the form of one
   */
  RackText text(Session session) throws Refusal {
    settings.forEach(this::requireForm);
    String source = rack.equals(STANDARD_INPUT) ? "standard input" : rack;
    return new RackText(bytes(session), source, settings);
  }

  /** What a setting says is about the rack; that it says nothing is about the command. */
  private void requireForm(String setting) {
    if (setting.indexOf('=') < 1) {
      throw new ParameterException(
          command.commandLine(),
          "--set "
              + setting
              + " is not KEY=VALUE, such as rack.upright=1400 or rack.openings[1].clear=even");
    }
  }

  /** One byte more than allowed is enough to be refused, however much there is. */
  private byte[] bytes(Session session) throws Refusal {
    try (InputStream in =
        rack.equals(STANDARD_INPUT) ? session.in() : Files.newInputStream(session.resolve(rack))) {
      return in.readNBytes(RackFileReader.MOST_BYTES + 1);
    } catch (IOException e) {
      throw new Refusal(
          ExitStatus.RACK_WRONG, rack + ": error: cannot be read: " + OutputException.reason(e));
    }
  }
}
