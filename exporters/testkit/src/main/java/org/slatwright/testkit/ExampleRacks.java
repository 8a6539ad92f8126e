package org.slatwright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** The example racks, which lie in this jar. */
final class ExampleRacks {

  private static final String FOLDER = "racks/";
  private static final String ENDING = ".yaml";

  private ExampleRacks() {}

  /** Their file names, in alphabetical order. */
  static List<String> names() {
    URL folder = ExampleRacks.class.getResource(FOLDER);
    try {
      return folder.openConnection() instanceof JarURLConnection jar
          ? namesIn(jar)
          : namesIn(Path.of(new URI(folder.toString())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The plan of one, with settings in place of its own. */
  static Plan plan(String name, String... settings) {
    return plan(name, read(name, settings));
  }

  /** The plan of one whose maker measures and prints otherwise. */
  static Plan plan(String name, Unit units, Paper paper) {
    RackFile file = read(name, "shop.paper=" + paper.word());
    return plan(name, changed(file, file.title(), units));
  }

  /** The plan of one under any title at all, whatever a rack file allows. */
  static Plan titled(String name, String title) {
    RackFile file = read(name);
    Given<String> given = new Given<>(title, file.title().key(), file.title().place());
    return plan(name, changed(file, given, file.units()));
  }

  private static RackFile changed(RackFile file, Given<String> title, Unit units) {
    return new RackFile(
        title,
        units,
        file.increment(),
        file.feetAbove(),
        file.holds(),
        file.timber(),
        file.rack(),
        file.slats(),
        file.joint(),
        file.shop(),
        file.load(),
        file.keys(),
        file.written());
  }

  private static Plan plan(String name, RackFile file) {
    try {
      return Planner.plan(file);
    } catch (RackFileException e) {
      throw new IllegalStateException("the example " + name + " is wrong: " + e.getMessage(), e);
    }
  }

  private static RackFile read(String name, String... settings) {
    try (InputStream in = ExampleRacks.class.getResourceAsStream(FOLDER + name)) {
      return RackFileReader.read(in.readAllBytes(), name, List.of(settings));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (RackFileException e) {
      throw new IllegalStateException("the example " + name + " is wrong: " + e.getMessage(), e);
    }
  }

  private static List<String> namesIn(JarURLConnection folder) throws IOException {
    String prefix = folder.getEntryName();
    return sorted(
        folder.getJarFile().stream()
            .map(entry -> entry.getName())
            .filter(name -> name.startsWith(prefix))
            .map(name -> name.substring(prefix.length())));
  }

  private static List<String> namesIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return sorted(files.map(file -> file.getFileName().toString()));
    }
  }

  private static List<String> sorted(Stream<String> names) {
    return names.filter(name -> name.endsWith(ENDING)).sorted().toList();
  }
}
