package org.slatwright.cli.plugin;

import java.util.List;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;

/**
 * An exporter that was found and says about itself what it should.
 *
 * @param format what it is asked for by
 * @param description one line
 * @param options what it understands
 * @param origin where it comes from: a jar, or {@code built in}
 */
public record Listed(
    Exporter exporter,
    String format,
    String description,
    List<ExportOption> options,
    String origin) {

  private static final String FORMAT = "[a-z][a-z0-9]*";

  public Listed {
    options = List.copyOf(options);
  }

  /** Asks the exporter; whatever that throws is passed on. */
  static Listed of(Exporter exporter, String origin) throws NotListable {
    String format = said("format", exporter.format());
    if (!format.matches(FORMAT)) {
      throw new NotListable(
          "its format '" + format + "' is not lower-case letters and digits, a letter first");
    }
    String description = said("description", exporter.description());
    List<ExportOption> options = said("list of options", exporter.options());
    return new Listed(exporter, format, description, options, origin);
  }

  private static <T> T said(String what, T value) throws NotListable {
    if (value == null) {
      throw new NotListable("its " + what + " is null");
    }
    return value;
  }
}
