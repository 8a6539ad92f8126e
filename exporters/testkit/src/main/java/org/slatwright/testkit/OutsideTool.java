package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Assumptions;

/**
 * A program outside the project that reads what an exporter wrote. Where it is missing the test is
 * skipped; with {@code SLATWRIGHT_REQUIRE_TOOLS=1} in the environment it fails instead.
 */
public final class OutsideTool {

  private static final String REQUIRED = "SLATWRIGHT_REQUIRE_TOOLS";

  private final List<String> command;

  private OutsideTool(List<String> command) {
    this.command = List.copyOf(command);
  }

  /**
   * A program that is there.
   *
   * @param probe a command that ends with status 0 where the program works, such as {@code ogrinfo
   *     --version}; its first word is the program
   */
  public static OutsideTool thatRuns(String... probe) {
    if (!succeeds(List.of(probe))) {
      missing(String.join(" ", probe));
    }
    return new OutsideTool(List.of(probe[0]));
  }

  /**
   * Python 3 with the modules named: the system's own, where Debian's packages are, rather than
   * whatever comes first on the path.
   */
  public static OutsideTool python(String... modules) {
    String system = "/usr/bin/python3";
    String python = Files.isExecutable(Path.of(system)) ? system : "python3";
    return thatRuns(python, "-c", "import sys" + imports(modules));
  }

  private static String imports(String... modules) {
    return modules.length == 0 ? "" : ", " + String.join(", ", modules);
  }

  /** What it prints, as UTF-8; a status other than 0 fails the test with what it complained of. */
  public String run(String... arguments) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(command);
    line.addAll(List.of(arguments));
    Path printed = Files.createTempFile("outside-tool", ".txt");
    try {
      Process process =
          new ProcessBuilder(line)
              .redirectErrorStream(true)
              .redirectOutput(printed.toFile())
              .start();
      int status = process.waitFor();
      String output = Files.readString(printed, StandardCharsets.UTF_8);
      assertEquals(0, status, () -> String.join(" ", line) + "\n" + output);
      return output;
    } finally {
      Files.delete(printed);
    }
  }

  /**
   * A script that lies beside a test, as an argument for {@link #run}.
   *
   * @param test whose package the script is in, among the test's resources
   */
  public static String script(Class<?> test, String name) {
    URL script =
        Objects.requireNonNull(test.getResource(name), () -> "no " + name + " beside " + test);
    try {
      return Path.of(script.toURI()).toString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean succeeds(List<String> line) {
    try {
      return new ProcessBuilder(line)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void missing(String probe) {
    String message = "needs a program that is not on this machine: " + probe;
    if ("1".equals(System.getenv(REQUIRED))) {
      fail(message);
    }
    Assumptions.abort(message);
  }
}
