package org.slatwright.design.rackfile;

/**
 * Where something was read.
 *
 * @param source the file as the maker named it, or the whole {@code --set} argument
 * @param line from 1; 0 when the source has no lines
 * @param column from 1, in characters; 0 when the source has no lines
 */
public record Place(String source, int line, int column) {

  /** {@code rack.yaml:14:11}, or the source alone. */
  @Override
  public String toString() {
    return line == 0 ? source : source + ":" + line + ":" + column;
  }
}
