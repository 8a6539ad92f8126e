package org.slatwright.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.slatwright.cli.output.OutputException;
import org.slatwright.cli.output.OutputFile;
import org.slatwright.design.rackfile.Starter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code slatwright start}. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description = "Writes a commented rack file to begin with: a small rack that can be built.")
final class StartCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The file to write, such as my-rack.yaml.")
  private String file;

  @Option(names = "--replace", description = "Writes over a file that exists.")
  private boolean replace;

  StartCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws Refusal {
    if (file.isBlank()) {
      throw new ParameterException(
          spec.commandLine(), "FILE is empty; name a file, such as my-rack.yaml");
    }
    Path target = session.resolve(file);
    try {
      OutputFile.write(target, Starter.text().getBytes(StandardCharsets.UTF_8), replace);
    } catch (OutputException e) {
      throw new Refusal(ExitStatus.NOT_WRITTEN, "error: " + e.getMessage());
    }
    session.out().println(target);
    return ExitStatus.DONE.code();
  }
}
