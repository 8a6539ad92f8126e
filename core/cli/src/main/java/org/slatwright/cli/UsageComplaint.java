package org.slatwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.slatwright.design.rackfile.NearestKey;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Answers wrong usage in a few lines: what is wrong, what was perhaps meant, where help is. */
final class UsageComplaint implements IParameterExceptionHandler {

  @Override
  public int handleParseException(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("error: " + message(wrong, command));
    err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
    return ExitStatus.USAGE_WRONG.code();
  }

  private static String message(ParameterException wrong, CommandLine command) {
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched, command);
    }
    if (wrong instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing.getMissing().get(0)) + " is missing";
    }
    return command.getParent() == null
        ? "a command is missing: " + String.join(", ", command.getSubcommands().keySet())
        : wrong.getMessage();
  }

  private static String missing(ArgSpec argument) {
    return argument instanceof OptionSpec option
        ? option.longestName() + "=" + option.paramLabel()
        : argument.paramLabel();
  }

  private static String unmatched(UnmatchedArgumentException unmatched, CommandLine command) {
    String first = unmatched.getUnmatched().get(0);
    if (unmatched.isUnknownOption()) {
      List<String> options = List.copyOf(command.getCommandSpec().optionsMap().keySet());
      return "there is no option " + first + guess(first, options);
    }
    return command.getParent() == null
        ? Unknown.message(
            "there is no command", first, List.copyOf(command.getSubcommands().keySet()))
        : first + " is one argument too many";
  }

  private static String guess(String written, List<String> known) {
    Optional<String> meant = NearestKey.to(written, known);
    return meant.map(option -> "; did you mean " + option + "?").orElse("");
  }
}
