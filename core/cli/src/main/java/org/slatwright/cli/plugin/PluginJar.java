package org.slatwright.cli.plugin;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.slatwright.api.export.Exporter;

/** A jar in a plugin folder. Its manifest is read before any of its code is. */
record PluginJar(Path path) {

  private static final Attributes.Name API = new Attributes.Name("Slatwright-Api");
  private static final String SERVICE_FILE = "META-INF/services/" + Exporter.class.getName();

  /** Why it cannot be loaded, or empty. A class loader would skip a corrupt jar without a word. */
  Optional<String> fault() {
    try (JarFile jar = new JarFile(path.toFile())) {
      Optional<String> mismatch = apiMismatch(jar.getManifest());
      if (mismatch.isPresent()) {
        return mismatch;
      }
      return jar.getEntry(SERVICE_FILE) == null
          ? Optional.of("it has no " + SERVICE_FILE)
          : Optional.empty();
    } catch (IOException | SecurityException e) {
      return Optional.of("it is not a readable jar (" + e.getMessage() + ")");
    }
  }

  /** A loader of its own, that the caller closes. */
  URLClassLoader open() throws IOException {
    return new URLClassLoader(
        path.getFileName().toString(), new URL[] {path.toUri().toURL()}, new ApiOnly());
  }

  private static Optional<String> apiMismatch(Manifest manifest) {
    String version = manifest == null ? null : manifest.getMainAttributes().getValue(API);
    if (version == null) {
      return Optional.of("its manifest does not say " + API + ": " + Exporter.API_VERSION);
    }
    return version.strip().equals(Integer.toString(Exporter.API_VERSION))
        ? Optional.empty()
        : Optional.of(
            "it is built for plugin api " + version.strip() + ", this is " + Exporter.API_VERSION);
  }
}
