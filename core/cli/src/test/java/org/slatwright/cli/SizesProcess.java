package org.slatwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** {@code slatwright sizes} in a process of its own. */
final class SizesProcess {

  private SizesProcess() {}

  /** Starts it in {@code desk}; what it prints goes to {@code printed.txt} there. */
  static Process start(Path desk, List<String> javaOptions, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(javaOptions);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(Slatwright.class.getName(), "sizes"));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .directory(desk.toFile())
        .redirectErrorStream(true)
        .redirectOutput(desk.resolve("printed.txt").toFile())
        .start();
  }
}
