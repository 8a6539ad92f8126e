package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.slatwright.design.rackfile.RackFileSchema;

class SchemaCommandTest {

  @Test
  void theSchemaAloneIsPrintedSoThatItCanBeKeptInAFile() throws IOException {
    try (Desk desk = Desk.with(Path.of("src/test/desk"))) {
      assertEquals(new Desk.Answer(RackFileSchema.json(), "", 0), desk.run("schema"));
    }
  }
}
