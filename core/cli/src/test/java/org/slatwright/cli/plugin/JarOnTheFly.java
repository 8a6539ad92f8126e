package org.slatwright.cli.plugin;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Builds a plugin jar from source text, good unless it is spoilt on purpose. */
public final class JarOnTheFly {

  private static final String SERVICE_FILE = "META-INF/services/org.slatwright.api.export.Exporter";

  private final Map<String, byte[]> entries = new TreeMap<>();
  private final Manifest manifest = new Manifest();

  /** With a manifest for this api and nothing else. */
  public JarOnTheFly() {
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    api("1");
  }

  /** A jar with one exporter, {@code plugin.Mine}, with these members instead of the usual. */
  public static JarOnTheFly withExporter(String format, String... members) throws IOException {
    return new JarOnTheFly().classes(exporter("Mine", format, members)).provider("plugin.Mine");
  }

  /** The source of an exporter. Its members may replace {@code description} and {@code export}. */
  public static String exporter(String name, String format, String... members) {
    String own = String.join("\n", members);
    String description =
        own.contains("String description()") ? "" : "public String description() { return \"D\"; }";
    String export =
        own.contains("void export(")
            ? ""
            : """
            public void export(Plan plan, OptionValues options, Destination destination)
                throws java.io.IOException {
              destination.file("mine.txt", out -> out.write('m'));
            }
            """;
    return """
    package plugin;
    import org.slatwright.api.export.*;
    import org.slatwright.api.plan.Plan;
    public class %s implements Exporter {
      public String format() { return %s; }
      %s
      %s
      %s
    }
    """
        .formatted(name, format, description, export, own);
  }

  /** Another api version, or none. */
  public JarOnTheFly api(String version) {
    Attributes.Name name = new Attributes.Name("Slatwright-Api");
    if (version.isEmpty()) {
      manifest.getMainAttributes().remove(name);
    } else {
      manifest.getMainAttributes().put(name, version);
    }
    return this;
  }

  /** Lines of the service file. */
  public JarOnTheFly provider(String... lines) {
    entries.put(SERVICE_FILE, String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    return this;
  }

  /** Compiles classes of the package {@code plugin}, one source each. */
  public JarOnTheFly classes(String... sources) throws IOException {
    Path folder = Files.createTempDirectory("classes");
    compile(folder, List.of(sources));
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        entries.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return this;
  }

  /** Takes an entry out again. */
  public JarOnTheFly without(String entry) {
    entries.remove(entry);
    return this;
  }

  /** Makes a class look as if a later Java had compiled it. */
  public JarOnTheFly madeByALaterJava(String entry) {
    entries.get(entry)[7] = (byte) 99;
    return this;
  }

  /** Writes the jar. */
  public Path writeTo(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    try (OutputStream out = Files.newOutputStream(file);
        JarOutputStream jar = new JarOutputStream(out, manifest)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        jar.putNextEntry(new JarEntry(entry.getKey()));
        jar.write(entry.getValue());
      }
    }
    return file;
  }

  private static void compile(Path folder, List<String> sources) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<JavaFileObject> units = new ArrayList<>();
    for (String source : sources) {
      String name = source.replaceAll("(?s).*?public (?:final )?class (\\w+).*", "$1");
      units.add(new Source(name, source));
    }
    StringWriter complaints = new StringWriter();
    List<String> options =
        List.of("-d", folder.toString(), "-cp", System.getProperty("java.class.path"));
    if (!compiler.getTask(complaints, null, null, options, null, units).call()) {
      throw new IllegalStateException(complaints.toString());
    }
  }

  private static final class Source extends SimpleJavaFileObject {
    private final String text;

    Source(String name, String text) {
      super(URI.create("string:///plugin/" + name + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
