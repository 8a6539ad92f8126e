package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.cli.plugin.Catalogue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which formats to write, and how. */
final class FormatChoice {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--to",
      paramLabel = "FORMAT",
      split = ",",
      description = "The formats to write, such as svg,dxf. All when left out.")
  private List<String> formats = List.of(Selection.ALL);

  @Option(
      names = "--option",
      paramLabel = "FORMAT.NAME=VALUE",
      description = {
        "Sets an option of an exporter; 'slatwright formats' lists them. May be repeated."
      })
  private List<String> options = new ArrayList<>();

  /**
   * The exporters asked for.
   *
   * @throws ParameterException when one of them, or an option, is not there
   */
  Selection from(Catalogue catalogue) {
    try {
      return Selection.of(catalogue, formats, options);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(command.commandLine(), e.getMessage());
    }
  }
}
