package org.slatwright.benchmarks;

import java.util.ServiceLoader;
import org.slatwright.api.export.Exporter;

/** The exporters that the command line ships. */
final class Shipped {

  private Shipped() {}

  static Exporter exporter(String format) {
    return ServiceLoader.load(Exporter.class).stream()
        .map(ServiceLoader.Provider::get)
        .filter(found -> found.format().equals(format))
        .findFirst()
        .orElseThrow();
  }
}
