package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.slatwright.api.export.Exporter;

/** Every rule can fail, and only for who breaks it. */
class ExporterContractTest {

  private static Supplier<Exporter> underTest = PlainExporter::new;

  /** Run by hand below, never found by itself. */
  static final class Trial extends ExporterContract {
    @Override
    protected Exporter exporter() {
      return underTest.get();
    }
  }

  static Stream<Arguments> whoBreaksWhat() {
    return Stream.of(
        arguments(101, (Supplier<Exporter>) BadExporters.Shouting::new),
        arguments(102, (Supplier<Exporter>) BadExporters.Verbose::new),
        arguments(103, (Supplier<Exporter>) BadExporters.RepeatsAnOption::new),
        arguments(104, (Supplier<Exporter>) () -> new BadExporters.WantsAName("x")),
        arguments(105, (Supplier<Exporter>) BadExporters.Unlisted::new),
        arguments(106, (Supplier<Exporter>) BadExporters.Eager::new),
        arguments(201, (Supplier<Exporter>) BadExporters.Escapes::new),
        arguments(201, (Supplier<Exporter>) BadExporters.HidesARepeatedName::new),
        arguments(201, (Supplier<Exporter>) BadExporters.WritesTooLate::new),
        arguments(202, (Supplier<Exporter>) BadExporters.Silent::new),
        arguments(203, (Supplier<Exporter>) BadExporters.Prints::new),
        arguments(203, (Supplier<Exporter>) BadExporters.Litters::new),
        arguments(301, (Supplier<Exporter>) BadExporters.Counts::new),
        arguments(302, (Supplier<Exporter>) BadExporters.Shares::new),
        arguments(303, (Supplier<Exporter>) BadExporters.SpeaksTheLocale::new),
        arguments(304, (Supplier<Exporter>) BadExporters.SetsAProperty::new),
        arguments(401, (Supplier<Exporter>) BadExporters.RefusesAll::new),
        arguments(402, (Supplier<Exporter>) BadExporters.FearsQuotes::new),
        arguments(403, (Supplier<Exporter>) BadExporters.NeedsAJig::new),
        arguments(404, (Supplier<Exporter>) BadExporters.NeedsASheet::new),
        arguments(405, (Supplier<Exporter>) BadExporters.NeedsACutList::new),
        arguments(406, (Supplier<Exporter>) BadExporters.FearsReferenceLines::new),
        arguments(501, (Supplier<Exporter>) BadExporters.FailsOnAValue::new),
        arguments(502, (Supplier<Exporter>) BadExporters.AsksForMore::new),
        arguments(601, (Supplier<Exporter>) BadExporters.Swallows::new),
        arguments(602, (Supplier<Exporter>) BadExporters.Sulks::new),
        arguments(701, (Supplier<Exporter>) BadExporters.LeavesFilesOpen::new),
        arguments(702, (Supplier<Exporter>) BadExporters.LeavesAThread::new));
  }

  @ParameterizedTest
  @MethodSource("whoBreaksWhat")
  void aBrokenRuleFails(int rule, Supplier<Exporter> bad) {
    assertTrue(brokenBy(bad).contains(rule), () -> rule + " was not noticed");
  }

  @Test
  void aGoodExporterBreaksNothing() {
    assertEquals(Set.of(), brokenBy(PlainExporter::new));
  }

  @Test
  void everyRequiredRuleIsProven() {
    Set<Integer> rules =
        Arrays.stream(ExporterContract.class.getDeclaredMethods())
            .map(java.lang.reflect.Method::getName)
            .filter(name -> name.startsWith("required_"))
            .map(ExporterContractTest::number)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<Integer> proven =
        whoBreaksWhat()
            .map(arguments -> (Integer) arguments.get()[0])
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(rules, proven);
  }

  @AfterEach
  void tidy() throws IOException {
    Files.deleteIfExists(BadExporters.Litters.LITTER);
    System.clearProperty("org.slatwright.testkit.bad");
  }

  @AfterAll
  static void close() throws IOException {
    BadExporters.LeavesFilesOpen.closeAll();
  }

  private static Set<Integer> brokenBy(Supplier<Exporter> exporter) {
    underTest = exporter;
    Set<Integer> broken = new TreeSet<>();
    Launcher launcher = LauncherFactory.create();
    launcher.execute(
        LauncherDiscoveryRequestBuilder.request().selectors(selectClass(Trial.class)).build(),
        new TestExecutionListener() {
          @Override
          public void executionFinished(TestIdentifier test, TestExecutionResult result) {
            if (result.getStatus() == TestExecutionResult.Status.FAILED) {
              broken.add(number(test.getDisplayName()));
            }
          }
        });
    return broken;
  }

  private static int number(String testName) {
    return Integer.parseInt(testName.split("_")[1]);
  }
}
