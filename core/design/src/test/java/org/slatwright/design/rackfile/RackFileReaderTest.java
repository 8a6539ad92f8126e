package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
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

  static RackFile read(String resource, String... settings) throws RackFileException {
    byte[] bytes = text(resource).getBytes(StandardCharsets.UTF_8);
    return RackFileReader.read(bytes, resource, List.of(settings));
  }

  static String text(String resource) {
    return Resource.text(resource);
  }
}
