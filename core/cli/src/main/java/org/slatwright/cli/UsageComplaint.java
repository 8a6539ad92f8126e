package org.slatwright.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Answers wrong usage in a few lines: what is wrong, what was perhaps meant, where help is. */
final class UsageComplaint implements IParameterExceptionHandler {

  @Override
  public int handleParseException(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("error: " + wrong.getMessage());
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      List<String> meant = unmatched.getSuggestions();
      if (!meant.isEmpty()) {
        err.println("Did you mean " + String.join(" or ", meant) + "?");
      }
    }
    err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
    return ExitStatus.USAGE_WRONG.code();
  }
}
