package org.slatwright.cli;

import java.nio.file.InvalidPathException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line's entry. */
@Command(
    name = "slatwright",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    description = "From one rack file to everything the bench needs.",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Exit status:",
      "  0  done",
      "  1  the rack file or the design is wrong",
      "  2  the command is wrong",
      "  3  a file could not be written, or an exporter failed",
      "",
      "Begin with: slatwright start my-rack.yaml"
    })
public final class Slatwright {

  private static final int HELP_WIDTH = 80;

  private Slatwright() {}

  /** Runs one command and ends the process with its status. */
  public static void main(String[] arguments) {
    System.exit(run(Session.ofProcess(), arguments));
  }

  /** Runs one command and gives its status. */
  static int run(Session session, String... arguments) {
    CommandLine line =
        new CommandLine(new Slatwright())
            .addSubcommand(new ExportCommand(session))
            .addSubcommand(new SizesCommand(session))
            .addSubcommand(new CheckCommand(session))
            .addSubcommand(new FormatsCommand(session))
            .addSubcommand(new StartCommand(session))
            .addSubcommand(new SchemaCommand(session))
            .setOut(session.out())
            .setErr(session.err())
            .setUsageHelpWidth(HELP_WIDTH)
            .setParameterExceptionHandler(new UsageComplaint())
            .setExecutionExceptionHandler(
                (failure, command, parsed) -> Slatwright.explained(session, failure));
    int status = statusOf(line, session, arguments);
    if (session.out().checkError()) {
      session.err().println("error: standard output could not be written");
      status = ExitStatus.NOT_WRITTEN.code();
    }
    session.err().flush();
    return status;
  }

  private static int statusOf(CommandLine line, Session session, String... arguments) {
    try {
      return line.execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError | LinkageError e) {
      return explained(session, e);
    }
  }

  private static int explained(Session session, Throwable failure) {
    if (failure instanceof Refusal refusal) {
      session.err().println(refusal.getMessage());
      return refusal.status().code();
    }
    if (failure instanceof InvalidPathException path) {
      session.err().println("error: " + path.getInput() + " cannot be a file name here");
      return ExitStatus.USAGE_WRONG.code();
    }
    session
        .err()
        .println("error: slatwright itself is at fault, please report this: " + Fault.of(failure));
    return ExitStatus.NOT_WRITTEN.code();
  }
}
