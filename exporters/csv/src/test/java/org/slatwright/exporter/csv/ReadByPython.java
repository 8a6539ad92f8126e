package org.slatwright.exporter.csv;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.testkit.OutsideTool;

/** Reads a table with Python's csv module, an independent reader of RFC 4180. */
final class ReadByPython {

  private ReadByPython() {}

  /** Each row but the header, by column. */
  static List<Map<String, String>> table(byte[] csv, Path folder)
      throws IOException, InterruptedException {
    List<List<String>> rows = rows(csv, folder);
    return rows.stream().skip(1).map(row -> byColumn(rows.get(0), row)).toList();
  }

  /** Every row, the header first. */
  static List<List<String>> rows(byte[] csv, Path folder) throws IOException, InterruptedException {
    Path file = Files.write(folder.resolve("read.csv"), csv);
    String printed =
        OutsideTool.python("csv")
            .run(
                "-X",
                "utf8",
                OutsideTool.script(ReadByPython.class, "read_csv.py"),
                file.toString());
    return Arrays.stream(printed.split("\u001e")).map(ReadByPython::cells).toList();
  }

  private static List<String> cells(String row) {
    String[] cells = row.split("\u001f", -1);
    // Each cell ends with its mark, so there is one split too many.
    return List.of(cells).subList(0, cells.length - 1);
  }

  private static Map<String, String> byColumn(List<String> header, List<String> row) {
    if (header.size() != row.size()) {
      throw new AssertionError(row + " does not fit " + header);
    }
    Map<String, String> named = new LinkedHashMap<>();
    for (int i = 0; i < row.size(); i++) {
      named.put(header.get(i), row.get(i));
    }
    return named;
  }
}
