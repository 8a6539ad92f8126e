package org.slatwright.cli.plugin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLClassLoader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.ServiceLoader.Provider;
import java.util.SortedMap;
import java.util.TreeMap;
import org.slatwright.api.export.Exporter;

/**
 * Every exporter there is, by format. The first of a format counts: what comes with the command
 * line, then the jars of each folder in the order of their names.
 */
public final class Catalogue implements AutoCloseable {

  private static final String BUILT_IN = "built in";

  private final SortedMap<String, Listed> byFormat = new TreeMap<>();
  private final List<Complaint> complaints = new ArrayList<>();
  private final List<URLClassLoader> loaders = new ArrayList<>();

  private Catalogue() {}

  /**
   * Looks on the class path and into folders of jars.
   *
   * @param folders each is there
   */
  public static Catalogue of(List<Path> folders) {
    Catalogue catalogue = new Catalogue();
    catalogue.takeAll(Exporter.class.getClassLoader(), BUILT_IN);
    folders.forEach(catalogue::takeFolder);
    return catalogue;
  }

  /** In the order of their formats. */
  public List<Listed> exporters() {
    return List.copyOf(byFormat.values());
  }

  /** The exporter of that format. */
  public Optional<Listed> exporter(String format) {
    return Optional.ofNullable(byFormat.get(format));
  }

  /** What was left out and why. */
  public List<Complaint> complaints() {
    return List.copyOf(complaints);
  }

  /** Closes the jars; the exporters that came from them are of no use afterwards. */
  @Override
  public void close() {
    for (URLClassLoader loader : loaders) {
      try {
        loader.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private void takeFolder(Path folder) {
    List<Path> jars = new ArrayList<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.jar")) {
      found.forEach(jars::add);
    } catch (IOException e) {
      complaints.add(new Complaint(folder.toString(), "it cannot be read: " + e.getMessage()));
    }
    jars.stream().sorted().forEach(this::takeJar);
  }

  private void takeJar(Path path) {
    PluginJar jar = new PluginJar(path);
    Optional<String> fault = jar.fault();
    if (fault.isPresent()) {
      complaints.add(new Complaint(path.toString(), fault.get()));
      return;
    }
    try {
      URLClassLoader loader = jar.open();
      loaders.add(loader);
      takeAll(loader, path.toString());
    } catch (IOException e) {
      complaints.add(new Complaint(path.toString(), Failure.reason(e)));
    }
  }

  private void takeAll(ClassLoader loader, String origin) {
    Iterator<Provider<Exporter>> providers =
        ServiceLoader.load(Exporter.class, loader).stream().iterator();
    int taken = 0;
    while (takeNext(providers, origin)) {
      taken++;
    }
    if (taken == 0) {
      complaints.add(new Complaint(origin, "its service file names no exporter"));
    }
  }

  /**
   * Takes one exporter. This is foreign code from its service file to its constructor, so anything
   * may be thrown, errors of linking among it.
   *
   * @return whether there may be another
   */
  private boolean takeNext(Iterator<Provider<Exporter>> providers, String origin) {
    try {
      if (!providers.hasNext()) {
        return false;
      }
      take(Listed.of(providers.next().get(), origin));
    } catch (Exception | Error e) {
      complaints.add(new Complaint(origin, Failure.reason(e)));
    }
    return true;
  }

  private void take(Listed found) {
    Listed first = byFormat.putIfAbsent(found.format(), found);
    if (first != null) {
      complaints.add(
          new Complaint(
              found.origin(),
              "the format " + found.format() + " is there already (" + first.origin() + ")"));
    }
  }
}
