package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class RackFileReaderTest {

  @Test
  void aFileWithEveryKeyIsRead() throws Exception {
    RackFile file = read("every-key.yaml");

    assertEquals(Optional.of(Length.mm(1500)), file.rack().upright().map(Given::value));
    assertEquals(new Place("every-key.yaml", 29, 12), file.rack().upright().get().place());
    assertEquals("rack.upright", file.rack().upright().get().key());
  }

  static RackFile read(String resource, String... settings) throws Exception {
    return RackFileReader.read(bytes(resource), resource, List.of(settings));
  }

  static byte[] bytes(String resource) throws IOException {
    try (InputStream in = RackFileReaderTest.class.getResourceAsStream(resource)) {
      return in.readAllBytes();
    }
  }
}
