package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The pictures in {@code examples/pictures} are what the tool draws of the examples. {@code
 * -Dslatwright.accept=true} draws them anew: look at them before committing.
 */
class PicturesTest {

  private static final Path EXAMPLES = Path.of("../../examples");

  @TestFactory
  List<DynamicTest> everyPictureIsWhatTheToolDraws() {
    return List.of(
        picture("seed-trays", "cover"),
        picture("seed-trays", "general-arrangement"),
        picture("seed-trays", "exploded-view"),
        picture("seed-trays", "frame"),
        picture("seed-trays", "joint"),
        picture("seed-trays", "drilling-jig"),
        picture("seed-trays", "order-of-work"),
        picture("seed-trays", "page-3"),
        picture("ware-boards", "jig-plates"),
        picture("ware-boards", "parts"),
        picture("onion-store", "shelf-layout"),
        picture("nursery-bench", "general-arrangement"));
  }

  private static DynamicTest picture(String rack, String sheet) {
    String name = rack + "-" + sheet + ".svg";
    return DynamicTest.dynamicTest(name, () -> check(rack, sheet, name));
  }

  private static void check(String rack, String sheet, String name) throws IOException {
    try (Desk desk = Desk.with(EXAMPLES.resolve("racks"))) {
      Desk.Answer answer = desk.run("export", rack + ".yaml", "--to", "svg", "--into", "out");
      assertEquals(0, answer.status(), answer::err);
      Path drawn = first(desk.directory().resolve("out"), sheet);
      String received = Files.readString(drawn, StandardCharsets.UTF_8);
      Path picture = EXAMPLES.resolve("pictures").resolve(name);
      if (Boolean.getBoolean("slatwright.accept")) {
        Files.writeString(picture, received, StandardCharsets.UTF_8);
      }
      assertEquals(Files.readString(picture, StandardCharsets.UTF_8), received);
    }
  }

  /** The first sheet of that name, whatever its number. */
  private static Path first(Path plan, String sheet) throws IOException {
    try (Stream<Path> files = Files.walk(plan)) {
      return files
          .filter(file -> file.getFileName().toString().matches("(\\d+-)?" + sheet + "\\.svg"))
          .min(Comparator.naturalOrder())
          .orElseThrow(() -> new AssertionError("no sheet " + sheet));
    }
  }
}
