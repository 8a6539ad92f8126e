package org.slatwright.cli;

import java.util.concurrent.Callable;
import org.slatwright.design.rackfile.RackFileSchema;
import picocli.CommandLine.Command;

/** {@code slatwright schema}. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = {
      "Prints the JSON Schema of the rack file, for an editor to complete and check it by."
    })
final class SchemaCommand implements Callable<Integer> {

  private final Session session;

  SchemaCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    session.out().print(RackFileSchema.json());
    return ExitStatus.DONE.code();
  }
}
