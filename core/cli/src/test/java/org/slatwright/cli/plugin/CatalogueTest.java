package org.slatwright.cli.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.cli.plugin.JarOnTheFly.exporter;
import static org.slatwright.cli.plugin.JarOnTheFly.withExporter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A broken jar costs one clear line that names it, and nothing else. */
class CatalogueTest {

  @TempDir private Path plugins;

  @Test
  void aGoodJarIsListedWithWhereItComesFrom() throws IOException {
    Path jar = withExporter("\"mine\"").writeTo(plugins.resolve("mine.jar"));
    try (Catalogue catalogue = Catalogue.of(List.of(plugins))) {
      Listed listed = catalogue.exporter("mine").orElseThrow();
      assertEquals("D", listed.description());
      assertEquals(jar.toString(), listed.origin());
      assertEquals(List.of(), catalogue.complaints());
    }
  }

  @Test
  void whatComesWithTheCommandLineIsBuiltIn() {
    try (Catalogue catalogue = Catalogue.of(List.of())) {
      assertEquals("built in", catalogue.exporter("csv").orElseThrow().origin());
      assertEquals(List.of(), catalogue.complaints());
    }
  }

  @Test
  void formatsAreInAlphabeticalOrder() throws IOException {
    withExporter("\"zz\"").writeTo(plugins.resolve("a.jar"));
    withExporter("\"aa\"").writeTo(plugins.resolve("z.jar"));
    try (Catalogue catalogue = Catalogue.of(List.of(plugins))) {
      List<String> formats = catalogue.exporters().stream().map(Listed::format).toList();
      assertEquals(formats.stream().sorted().toList(), formats);
      assertTrue(formats.containsAll(List.of("aa", "csv", "zz")), formats::toString);
    }
  }

  @Test
  void oneJarMayBringSeveral() throws IOException {
    new JarOnTheFly()
        .classes(exporter("One", "\"one\""), exporter("Two", "\"two\""))
        .provider("plugin.One", "# a comment", "plugin.Two")
        .writeTo(plugins.resolve("both.jar"));
    try (Catalogue catalogue = Catalogue.of(List.of(plugins))) {
      assertTrue(catalogue.exporter("one").isPresent());
      assertTrue(catalogue.exporter("two").isPresent());
    }
  }

  @Test
  void twoJarsMayBringTheSameClassEachItsOwn() throws IOException {
    withHelper("left").writeTo(plugins.resolve("left.jar"));
    withHelper("right").writeTo(plugins.resolve("right.jar"));
    try (Catalogue catalogue = Catalogue.of(List.of(plugins))) {
      assertTrue(catalogue.exporter("left").isPresent());
      assertTrue(catalogue.exporter("right").isPresent());
    }
  }

  @Test
  void aPluginSeesTheApiAndNoLibraryOfOurs() throws IOException {
    assertLeftOut(
        withExporter("new picocli.CommandLine(this).getCommandName()"),
        "NoClassDefFoundError: picocli/CommandLine");
  }

  @Test
  void aProviderThatIsNotThere() throws IOException {
    assertLeftOut(withExporter("\"mine\"").provider("plugin.Absent"), "plugin.Absent not found");
  }

  @Test
  void aProviderOfAnotherType() throws IOException {
    assertLeftOut(
        new JarOnTheFly().classes("package plugin; public class Mine {}").provider("plugin.Mine"),
        "plugin.Mine not a subtype");
  }

  @Test
  void aConstructorThatThrows() throws IOException {
    assertLeftOut(
        withExporter(
            "\"mine\"", "public Mine() { throw new IllegalStateException(\"no\\nluck\"); }"),
        "IllegalStateException: no luck");
  }

  @Test
  void aConstructorWithParameters() throws IOException {
    assertLeftOut(withExporter("\"mine\"", "public Mine(int n) {}"), "NoSuchMethodException");
  }

  @Test
  void aStaticInitialiserThatThrows() throws IOException {
    assertLeftOut(
        withExporter("\"mine\"", "static final int N = Integer.parseInt(\"x\");"),
        "NumberFormatException: For input string: \"x\"");
  }

  @Test
  void aClassThatIsMissing() throws IOException {
    assertLeftOut(
        withHelper("mine").without("plugin/Helper.class"), "NoClassDefFoundError: plugin/Helper");
  }

  @Test
  void aMalformedServiceFile() throws IOException {
    assertLeftOut(withExporter("\"mine\"").provider("plugin Mine!"), "syntax");
  }

  @Test
  void aClassMadeByALaterJava() throws IOException {
    assertLeftOut(
        withExporter("\"mine\"").madeByALaterJava("plugin/Mine.class"),
        "UnsupportedClassVersionError");
  }

  @Test
  void aJarThatIsNone() throws IOException {
    Files.writeString(plugins.resolve("bad.jar"), "PK\u0003\u0004 and then nothing");
    assertOneComplaint("it is not a readable jar");
  }

  @Test
  void anEmptyFile() throws IOException {
    Files.createFile(plugins.resolve("bad.jar"));
    assertOneComplaint("it is not a readable jar");
  }

  @Test
  void aJarCutOffInTheMiddle() throws IOException {
    Path jar = withExporter("\"mine\"").writeTo(plugins.resolve("bad.jar"));
    byte[] bytes = Files.readAllBytes(jar);
    Files.write(jar, Arrays.copyOf(bytes, bytes.length / 2));
    assertOneComplaint("it is not a readable jar");
  }

  @Test
  void aFolderNamedLikeAJar() throws IOException {
    Files.createDirectory(plugins.resolve("bad.jar"));
    assertOneComplaint("it is not a readable jar");
  }

  @Test
  void aJarWithoutAServiceFile() throws IOException {
    assertLeftOut(
        new JarOnTheFly().classes(exporter("Mine", "\"mine\"")),
        "it has no META-INF/services/org.slatwright.api.export.Exporter");
  }

  @Test
  void aJarWithAnEmptyServiceFile() throws IOException {
    assertLeftOut(withExporter("\"mine\"").provider("# none"), "names no exporter");
  }

  @Test
  void anotherApiVersion() throws IOException {
    assertLeftOut(withExporter("\"mine\"").api("2"), "it is built for plugin api 2, this is 1");
  }

  @Test
  void noApiVersion() throws IOException {
    assertLeftOut(withExporter("\"mine\"").api(""), "its manifest does not say Slatwright-Api: 1");
  }

  @Test
  void aFormatThatIsBuiltIn() throws IOException {
    assertLeftOut(withExporter("\"csv\""), "the format csv is there already (built in)");
  }

  @Test
  void aFormatOfAJarBefore() throws IOException {
    Path first = withExporter("\"mine\"").writeTo(plugins.resolve("a.jar"));
    assertLeftOut(withExporter("\"mine\""), "the format mine is there already (" + first + ")");
  }

  @Test
  void aFormatThatCannotBeTyped() throws IOException {
    assertLeftOut(withExporter("\"My Format\""), "its format 'My Format' is not lower-case");
  }

  @Test
  void aFormatThatIsNull() throws IOException {
    assertLeftOut(withExporter("null"), "its format is null");
  }

  @Test
  void aDescriptionThatThrows() throws IOException {
    assertLeftOut(
        withExporter("\"mine\"", "public String description() { throw new StackOverflowError(); }"),
        "StackOverflowError");
  }

  @Test
  void optionsThatAreNull() throws IOException {
    assertLeftOut(
        withExporter("\"mine\"", "public java.util.List<ExportOption> options() { return null; }"),
        "its list of options is null");
  }

  /** An exporter that asks another class of its jar for its format. */
  private static JarOnTheFly withHelper(String format) throws IOException {
    String helper =
        "package plugin; public class Helper { static String format() { return \"%s\"; } }";
    return new JarOnTheFly()
        .classes(exporter("Mine", "Helper.format()"), helper.formatted(format))
        .provider("plugin.Mine");
  }

  private void assertLeftOut(JarOnTheFly bad, String reason) throws IOException {
    bad.writeTo(plugins.resolve("bad.jar"));
    assertOneComplaint(reason);
  }

  /** One complaint about {@code bad.jar}; a good jar beside it is listed all the same. */
  private void assertOneComplaint(String reason) throws IOException {
    withExporter("\"good\"").writeTo(plugins.resolve("good.jar"));
    try (Catalogue catalogue = Catalogue.of(List.of(plugins))) {
      assertEquals(1, catalogue.complaints().size(), catalogue.complaints()::toString);
      Complaint complaint = catalogue.complaints().get(0);
      assertEquals(plugins.resolve("bad.jar").toString(), complaint.origin());
      assertTrue(complaint.reason().contains(reason), complaint::reason);
      assertEquals(1, complaint.reason().lines().count(), complaint::reason);
      assertTrue(catalogue.exporter("good").isPresent());
      assertTrue(catalogue.exporter("csv").isPresent());
    }
  }
}
