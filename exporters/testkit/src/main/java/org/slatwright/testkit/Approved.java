package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares what an exporter wrote with a golden file: one that somebody opened and found right. Run
 * in a module's folder, as Maven does. {@code -Dslatwright.accept=true} writes what was received
 * into the golden files: look at each of them before committing it.
 */
public final class Approved {

  private static final String ACCEPT = "slatwright.accept";
  private static final Path RESOURCES = Path.of("src", "test", "resources");
  private static final Path RECEIVED = Path.of("target", "received");

  private Approved() {}

  /**
   * Fails unless {@code received} is, byte for byte, the golden file beside the test's resources;
   * what was received is then in {@code target/received}, to be looked at.
   *
   * @param test whose package the golden file is in
   * @param name of the golden file, such as {@code plate.approved.dxf}
   * @param received what the exporter wrote
   */
  public static void check(Class<?> test, String name, String received) throws IOException {
    Path folder = Path.of(test.getPackageName().replace('.', '/'));
    Path golden = RESOURCES.resolve(folder).resolve(name);
    if (Boolean.getBoolean(ACCEPT)) {
      write(golden, received);
    }
    String approved = Files.exists(golden) ? Files.readString(golden, StandardCharsets.UTF_8) : "";
    if (!approved.equals(received)) {
      Path kept = RECEIVED.resolve(folder).resolve(name.replace(".approved.", ".received."));
      write(kept, received);
      assertEquals(
          approved,
          received,
          () -> "look at " + kept + "; if right, run with -D" + ACCEPT + "=true");
    }
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}
