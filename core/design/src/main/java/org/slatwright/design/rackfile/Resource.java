package org.slatwright.design.rackfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** A text that comes with this package. */
final class Resource {

  private Resource() {}

  static String text(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      byte[] bytes = Objects.requireNonNull(in, name + " is not in the jar").readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
