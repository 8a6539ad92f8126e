package org.slatwright.cli.plugin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.export.Exporter;

/** The version that plugins are asked for is the one that our own jars and the example name. */
class ApiVersionTest {

  @Test
  void everyManifestNamesTheVersionOfTheApi() throws Exception {
    String named = "<Slatwright-Api>" + Exporter.API_VERSION + "</Slatwright-Api>";
    for (String pom : List.of("../../pom.xml", "../../examples/exporter-plugin/pom.xml")) {
      assertTrue(Files.readString(Path.of(pom)).contains(named), pom);
    }
  }
}
