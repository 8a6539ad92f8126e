package org.slatwright.cli;

import java.util.concurrent.Callable;
import org.slatwright.api.export.ExportOption;
import org.slatwright.cli.plugin.Catalogue;
import org.slatwright.cli.plugin.Listed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code slatwright formats}. */
@Command(
    name = "formats",
    mixinStandardHelpOptions = true,
    description = "Lists the exporters found, where each comes from, and their options.")
final class FormatsCommand implements Callable<Integer> {

  private final Session session;

  @Mixin private PluginFolders plugins;

  FormatsCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    try (Catalogue catalogue = plugins.catalogue(session)) {
      catalogue.exporters().forEach(this::print);
    }
    return ExitStatus.DONE.code();
  }

  private void print(Listed exporter) {
    session
        .out()
        .printf("%s: %s (%s)%n", exporter.format(), exporter.description(), exporter.origin());
    for (ExportOption option : exporter.options()) {
      session
          .out()
          .printf(
              "    --option %s.%s=%s%n        %s; %s when not given%n",
              exporter.format(),
              option.name(),
              option.form() == ExportOption.Form.LENGTHS
                  ? "LENGTH, such as " + String.join(" or ", option.values())
                  : String.join("|", option.values()),
              option.description(),
              option.defaultValue());
    }
  }
}
