package org.slatwright.cli.house;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.charset.Charset;
import java.util.Calendar;
import java.util.Date;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.export.Exporter;

/** The walls of the house: who may know whom. Every rule first proves that it saw the rooms. */
class HouseRulesTest {

  private static final String HOUSE = "org.slatwright";
  private static final String API = HOUSE + ".api..";
  private static final String DESIGN = HOUSE + ".design..";
  private static final String CLI = HOUSE + ".cli..";
  private static final String EXPORTERS = HOUSE + ".exporter..";

  /** No exporter itself: drawings as SVG, for the exporters whose format holds SVG. */
  private static final String FIGURES = HOUSE + ".exporter.figures..";

  /** What each exporter may know besides the JDK and the api: its own package and library. */
  private static final Map<String, Set<String>> LIBRARIES =
      new TreeMap<>(
          Map.of(
              "csv", Set.of("org.apache.commons.csv.."),
              "dxf", Set.of(),
              "html", Set.of(FIGURES, "org.w3c..", "javax.xml.."),
              "json", Set.of("com.fasterxml.jackson.core.."),
              "pdf", Set.of("org.apache.fontbox..", "org.apache.pdfbox.."),
              "png", Set.of("org.apache.fontbox..", "org.apache.pdfbox.io.."),
              "stl", Set.of(),
              "svg", Set.of(FIGURES, "org.w3c..", "javax.xml..")));

  private static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(HOUSE);

  @Test
  void everyRoomWasSeen() {
    assertSeen(API, 50);
    assertSeen(DESIGN, 80);
    assertSeen(CLI, 25);
    assertSeen(EXPORTERS, 10);
  }

  @Test
  void theApiKnowsTheJdkAlone() {
    classes()
        .that()
        .resideInAPackage(API)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("java..", API)
        .because("a plugin compiled against it must not inherit a library")
        .check(ALL);
  }

  static Set<String> formats() {
    Set<String> found = new TreeSet<>();
    ServiceLoader.load(Exporter.class).forEach(exporter -> found.add(exporter.format()));
    return found;
  }

  @ParameterizedTest
  @MethodSource("formats")
  void anExporterKnowsTheApiAndItsOwnLibraryAlone(String format) {
    String own = HOUSE + ".exporter." + format + "..";
    assertTrue(LIBRARIES.containsKey(format), () -> "say which library " + format + " may know");
    Set<String> allowed = new TreeSet<>(LIBRARIES.get(format));
    allowed.addAll(Set.of("java..", API, own));
    assertSeen(own, 3);
    classes()
        .that()
        .resideInAPackage(own)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed.toArray(String[]::new))
        .because("an exporter spells what stands in the plan: it designs nothing")
        .check(ALL);
  }

  @Test
  void figuresKnowTheApiAndTheirOwnLibrariesAlone() {
    classes()
        .that()
        .resideInAPackage(FIGURES)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "java..",
            API,
            FIGURES,
            "org.apache.batik..",
            "org.apache.fontbox..",
            "org.apache.pdfbox.io..",
            "org.w3c..",
            "javax.xml..")
        .because("an exporter that holds a drawing must not inherit another exporter")
        .check(ALL);
  }

  @Test
  void theDesignKnowsNoFormatAndNoCommandLine() {
    classes()
        .that()
        .resideInAPackage(DESIGN)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "java..", API, DESIGN, "org.snakeyaml.engine..", "org.locationtech.jts..")
        .because("a part of the core that knows a file format is in the wrong room")
        .check(ALL);
  }

  @Test
  void aLibraryStaysInItsRoom() {
    noClasses()
        .that()
        .resideOutsideOfPackage(HOUSE + ".design.rackfile..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.snakeyaml.engine..")
        .because("what YAML is ends where a rack file has been read")
        .check(ALL);
    noClasses()
        .that()
        .resideOutsideOfPackage(CLI)
        .should()
        .dependOnClassesThat()
        .resideInAPackage("picocli..")
        .because("only the command line has options")
        .check(ALL);
    noClasses()
        .that()
        .resideOutsideOfPackage(DESIGN)
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.locationtech.jts..")
        .because("outlines leave the design as true lines and arcs")
        .check(ALL);
  }

  @Test
  void theDesignFlowsOneWay() {
    layeredArchitecture()
        .consideringOnlyDependenciesInAnyPackage(DESIGN)
        .layer("planner")
        .definedBy(HOUSE + ".design")
        .layer("drafting")
        .definedBy(HOUSE + ".design.drafting..", HOUSE + ".design.templates..")
        .layer("workshop")
        .definedBy(HOUSE + ".design.jig..", HOUSE + ".design.machining..")
        .layer("steps")
        .definedBy(HOUSE + ".design.steps..")
        .layer("outline")
        .definedBy(HOUSE + ".design.outline..", HOUSE + ".design.packing..")
        .layer("framing")
        .definedBy(HOUSE + ".design.framing..")
        .layer("reckoning")
        .definedBy(
            HOUSE + ".design.takeoff..", HOUSE + ".design.checks..", HOUSE + ".design.cutting..")
        .layer("cutting stock")
        .definedBy(HOUSE + ".design.cuttingstock..")
        .layer("boards")
        .definedBy(HOUSE + ".design.boards..")
        .layer("sizing")
        .definedBy(HOUSE + ".design.sizing..")
        .layer("rackfile")
        .definedBy(HOUSE + ".design.rackfile..")
        .layer("mechanics")
        .definedBy(HOUSE + ".design.mechanics..")
        .layer("wood")
        .definedBy(HOUSE + ".design.wood..")
        .whereLayer("planner")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("steps")
        .mayOnlyBeAccessedByLayers("planner")
        .whereLayer("drafting")
        .mayOnlyBeAccessedByLayers("planner")
        .whereLayer("workshop")
        .mayOnlyBeAccessedByLayers("planner", "drafting", "steps")
        .whereLayer("outline")
        .mayOnlyBeAccessedByLayers("drafting", "workshop")
        .whereLayer("reckoning")
        .mayOnlyBeAccessedByLayers("planner")
        .whereLayer("framing")
        .mayOnlyBeAccessedByLayers("planner", "drafting", "workshop", "reckoning", "steps")
        .whereLayer("sizing")
        .mayOnlyBeAccessedByLayers(
            "planner", "drafting", "workshop", "reckoning", "framing", "steps")
        .whereLayer("rackfile")
        .mayOnlyBeAccessedByLayers("planner", "sizing")
        .whereLayer("mechanics")
        .mayOnlyBeAccessedByLayers("reckoning")
        .whereLayer("wood")
        .mayOnlyBeAccessedByLayers("reckoning", "sizing", "rackfile", "steps")
        .whereLayer("cutting stock")
        .mayOnlyBeAccessedByLayers("reckoning")
        .whereLayer("boards")
        .mayOnlyBeAccessedByLayers("reckoning", "framing", "sizing")
        .ensureAllClassesAreContainedInArchitecture()
        .because("one direction, no way back: a sheet never decides a size")
        .check(ALL.that(resideInAnyPackage(DESIGN)));
  }

  @Test
  void packagesHaveNoCycles() {
    slices()
        .matching(HOUSE + ".(**)")
        .should()
        .beFreeOfCycles()
        .because("two packages that need each other are one")
        .check(ALL);
  }

  @Test
  void sameInputGivesSameBytes() {
    noClasses()
        .that()
        .resideInAnyPackage(API, DESIGN, EXPORTERS)
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(Date.class, Calendar.class, UUID.class)
        .orShould()
        .dependOnClassesThat(areRandomButNotSpecified())
        .orShould()
        .callConstructor(Random.class)
        .orShould()
        .dependOnClassesThat()
        .resideInAPackage("java.time..")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "identityHashCode", Object.class)
        .because("no clock and no chance reach the output")
        .check(ALL);
  }

  /** What {@link Random} gives for a seed stands in its Javadoc, so it is the same everywhere. */
  private static DescribedPredicate<JavaClass> areRandomButNotSpecified() {
    return JavaClass.Predicates.assignableTo(RandomGenerator.class)
        .and(DescribedPredicate.not(JavaClass.Predicates.type(Random.class)));
  }

  @Test
  void everyMachineGivesSameBytes() {
    noClasses()
        .that()
        .resideInAnyPackage(API, DESIGN, EXPORTERS)
        .should()
        .callMethod(Locale.class, "getDefault")
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .orShould()
        .callMethod(Charset.class, "defaultCharset")
        .orShould()
        .callMethod(System.class, "lineSeparator")
        .orShould()
        .callMethod(System.class, "getenv", String.class)
        .orShould()
        .callMethod(System.class, "getProperty", String.class)
        .because("the machine's language and environment are no part of a rack file")
        .check(ALL);
  }

  @Test
  void onlyTheCommandLineSpeaks() {
    noClasses()
        .that()
        .resideInAnyPackage(API, DESIGN, EXPORTERS)
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethodWhere(
            target(name("printStackTrace")).and(target(owner(assignableTo(Throwable.class)))))
        .because("results and complaints go through the command line's own streams")
        .check(ALL);
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName(HOUSE + ".cli.Slatwright")
        .should()
        .callMethod(System.class, "exit", int.class)
        .because("one place ends the process")
        .check(ALL);
  }

  private static void assertSeen(String room, int least) {
    long seen = ALL.that(resideInAnyPackage(room)).size();
    assertTrue(seen >= least, () -> room + " has only " + seen + " classes");
  }
}
