package org.slatwright.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slatwright.api.export.ExportOption;
import org.slatwright.cli.plugin.Listed;

/** One {@code --option FORMAT.NAME=VALUE}. */
record OptionSetting(String format, String name, String value) {

  private static final Pattern FORM = Pattern.compile("([^.=]+)\\.([^.=]+)=(.*)");

  /**
   * What {@code text} says.
   *
   * @throws IllegalArgumentException when it has another form
   */
  static OptionSetting read(String text) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "--option " + text + " is not FORMAT.NAME=VALUE, such as dxf.version=R12");
    }
    return new OptionSetting(matcher.group(1), matcher.group(2), matcher.group(3));
  }

  /**
   * Checks it against what the exporter offers.
   *
   * @throws IllegalArgumentException when it has no such option or the option no such value
   */
  void requireOfferedBy(Listed exporter) {
    ExportOption option =
        exporter.options().stream()
            .filter(candidate -> candidate.name().equals(name))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        Unknown.message(
                            format + " has no option",
                            name,
                            exporter.options().stream().map(ExportOption::name).toList())));
    if (!option.takes(value)) {
      throw new IllegalArgumentException(refusal(option));
    }
  }

  private String refusal(ExportOption option) {
    String asked = format + "." + name;
    return option.form() == ExportOption.Form.LENGTHS
        ? asked
            + " takes lengths such as "
            + String.join(" or ", option.values())
            + ", not "
            + value
        : Unknown.message(asked + " has no value", value, option.values());
  }
}
