package org.slatwright.cli;

import java.util.Arrays;

/** A fault of the program, in the one line that whoever mends it needs. */
final class Fault {

  private static final String OWN = "org.slatwright.";

  private Fault() {}

  static String of(Throwable failure) {
    String where =
        Arrays.stream(failure.getStackTrace())
            .filter(frame -> frame.getClassName().startsWith(OWN))
            .findFirst()
            .map(frame -> " at " + frame.getFileName() + ":" + frame.getLineNumber())
            .orElse("");
    return failure.toString().replaceAll("\\s+", " ") + where;
  }
}
