package org.slatwright.design.rackfile;

import java.util.List;

/** All that is wrong with a rack file, in the order of the file. */
public class RackFileException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /** With at least one problem. */
  public RackFileException(List<Problem> problems) {
    super(String.join("\n", problems.stream().map(p -> p.place() + ": " + p.message()).toList()));
    this.problems = List.copyOf(problems);
  }

  /** What is wrong. */
  public List<Problem> problems() {
    return problems;
  }
}
