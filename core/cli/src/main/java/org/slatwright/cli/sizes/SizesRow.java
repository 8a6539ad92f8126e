package org.slatwright.cli.sizes;

import java.util.List;

/**
 * One row of a table of sizes.
 *
 * @param line of the table where it begins, from 1
 * @param folder the name of the folder that its plan goes into
 * @param settings as {@code --set} takes them, in the order of the columns
 * @param faults what is wrong with the row itself; empty when nothing is
 */
public record SizesRow(long line, String folder, List<String> settings, List<String> faults) {

  public SizesRow {
    settings = List.copyOf(settings);
    faults = List.copyOf(faults);
  }
}
