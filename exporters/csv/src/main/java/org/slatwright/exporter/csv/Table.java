package org.slatwright.exporter.csv;

import java.util.List;

/**
 * One table.
 *
 * @param name its output name, without an ending
 * @param header the names of its columns, all different, with their unit where they have one
 * @param rows each with one cell a column
 */
record Table(String name, List<String> header, List<List<Cell>> rows) {

  Table {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Cell> row : rows) {
      if (row.size() != header.size()) {
        throw new IllegalArgumentException(
            "table " + name + " has " + header.size() + " columns, a row has " + row.size());
      }
    }
  }
}
