package org.slatwright.exporter.html;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.export.ExportException;

/** The style sheets and scripts, which lie beside this class. */
final class PageAssets {

  private static final List<String> STYLES =
      List.of("page.css", "bar.css", "tables.css", "steps.css", "viewer.css", "print.css");
  private static final List<String> SCRIPTS =
      List.of("memory.js", "choices.js", "ticks.js", "tables.js", "viewer.js");

  private PageAssets() {}

  /** Everything but what depends on the plan. */
  static String styles() throws IOException, ExportException {
    return colours() + joined(STYLES);
  }

  /** Everything, each script in a block of its own. */
  static String scripts() throws IOException, ExportException {
    return joined(SCRIPTS);
  }

  /** The dark colours hold by the device's wish or the reader's, on a screen alone. */
  private static String colours() throws IOException, ExportException {
    String dark = read("dark.css");
    return ":root{\n"
        + read("light.css")
        + "}\n@media screen{\n@media (prefers-color-scheme:dark){:root:not([data-theme=light]){\n"
        + dark
        + "}}\n:root[data-theme=dark]{\n"
        + dark
        + "}}\n";
  }

  private static String joined(List<String> names) throws IOException, ExportException {
    StringBuilder all = new StringBuilder();
    for (String name : names) {
      all.append(read(name));
    }
    return all.toString();
  }

  private static String read(String name) throws IOException, ExportException {
    try (InputStream in = PageAssets.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new ExportException("the html exporter lacks its file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
