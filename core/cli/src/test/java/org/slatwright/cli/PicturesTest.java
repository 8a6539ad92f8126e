package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        picture("seed-trays", "drawings/00-cover"),
        picture("seed-trays", "drawings/01-general-arrangement"),
        picture("seed-trays", "drawings/02-drilling-jig"),
        picture("seed-trays", "templates/page-3"),
        picture("ware-boards", "drawings/03-jig-plates"),
        picture("nursery-bench", "drawings/01-general-arrangement"));
  }

  private static DynamicTest picture(String rack, String sheet) {
    String name = rack + "-" + Path.of(sheet).getFileName() + ".svg";
    return DynamicTest.dynamicTest(name, () -> check(rack, sheet, name));
  }

  private static void check(String rack, String sheet, String name) throws IOException {
    try (Desk desk = Desk.with(EXAMPLES.resolve("racks"))) {
      Desk.Answer answer = desk.run("export", rack + ".yaml", "--to", "svg", "--into", "out");
      assertEquals(0, answer.status(), answer::err);
      Path drawn = desk.directory().resolve("out/" + sheet + ".svg");
      String received = Files.readString(drawn, StandardCharsets.UTF_8);
      Path picture = EXAMPLES.resolve("pictures").resolve(name);
      if (Boolean.getBoolean("slatwright.accept")) {
        Files.writeString(picture, received, StandardCharsets.UTF_8);
      }
      assertEquals(Files.readString(picture, StandardCharsets.UTF_8), received);
    }
  }
}
