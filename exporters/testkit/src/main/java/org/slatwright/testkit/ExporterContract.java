package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/**
 * The contract of an {@link Exporter}. Extend it, implement {@link #exporter}, and run it with
 * JUnit 5: a rule that fails says what to mend. <em>Required</em> rules are what the command line
 * relies on; an <em>optional</em> one is skipped, with the reason, when it does not hold.
 *
 * <h2>1 · Found and listed</h2>
 *
 * <ol>
 *   <li value="101">The format is lower-case letters and digits, starting with a letter.
 *   <li value="102">The description is one line that says something.
 *   <li value="103">Options are lower-case words joined by hyphens, each once, described in a line,
 *       and each allows different values.
 *   <li value="104">The class is public, with a public constructor without parameters.
 *   <li value="105">The class is named in {@code META-INF/services}.
 *   <li value="106">Being listed loads no class of a library: what needs one is in a class that
 *       {@code export} is the first to touch.
 * </ol>
 *
 * <h2>2 · Through the destination alone</h2>
 *
 * <ol>
 *   <li value="201">Every name is safe and used once, also where case does not count; nothing is
 *       written once a file's content has returned.
 *   <li value="202">A plan that has everything gives at least one file.
 *   <li value="203">Nothing is printed, nothing appears in the working directory.
 * </ol>
 *
 * <h2>3 · Same plan, same bytes</h2>
 *
 * <ol>
 *   <li value="301">A second export gives the same bytes, from the same object and from a new one.
 *   <li value="302">So do several at once, each in its own thread.
 *   <li value="303">So does another default locale and time zone.
 *   <li value="304">Locale, time zone and system properties are left as they were.
 * </ol>
 *
 * <h2>4 · Any plan</h2>
 *
 * <ol>
 *   <li value="401">Every example can be written.
 *   <li value="402">Odd titles can be written: quotes, markup, emoji, right-to-left, 200
 *       characters.
 *   <li value="403">A plan without a jig can be written.
 *   <li value="404">A plan without sheets can be written.
 *   <li value="405">A plan with nothing but its assembly can be written.
 *   <li value="406">One of every kind of figure, outline and operation can be written.
 * </ol>
 *
 * <h2>5 · Options</h2>
 *
 * <ol>
 *   <li value="501">Every value of every option works, and gives the same bytes twice.
 *   <li value="502">No option is asked for that is not declared.
 *   <li value="503"><em>(optional)</em> Every value gives other bytes than the default does.
 * </ol>
 *
 * <h2>6 · When the disk is full</h2>
 *
 * <ol>
 *   <li value="601">An {@link IOException} from the destination is passed on, whether it comes
 *       before or while a file is written.
 *   <li value="602">After it, the next export gives the right bytes.
 * </ol>
 *
 * <h2>7 · Tidy</h2>
 *
 * <ol>
 *   <li value="701">What is opened is closed (where the system counts open files).
 *   <li value="702">No thread that keeps the program alive is left running.
 * </ol>
 */
public abstract class ExporterContract {

  private static final String FORMAT = "[a-z][a-z0-9]*";
  private static final String OPTION = "[a-z][a-z0-9]*(-[a-z0-9]+)*";
  private static final int THREADS = 4;
  private static final int EXPORTS_TO_SEE_A_LEAK = 20;

  // Planned once: each is a whole rack, drawn anew.
  private static final List<Plan> ODDLY_TITLED =
      SamplePlans.ODD_TITLES.stream().map(SamplePlans::titled).toList();

  /** A new exporter, as its constructor without parameters makes it. */
  protected abstract Exporter exporter();

  @Test
  final void required_101_the_format_is_well_formed() {
    String format = exporter().format();
    assertTrue(format.matches(FORMAT), "format() is '" + format + "'");
  }

  @Test
  final void required_102_the_description_is_one_line() {
    assertOneLine("description()", exporter().description());
  }

  @Test
  final void required_103_options_are_well_formed() {
    List<ExportOption> options = exporter().options();
    assertDistinct("option names", options.stream().map(ExportOption::name).toList());
    for (ExportOption option : options) {
      assertTrue(option.name().matches(OPTION), "option name '" + option.name() + "'");
      assertOneLine("the description of " + option.name(), option.description());
      assertDistinct("values of " + option.name(), option.values());
      option.values().forEach(value -> assertOneLine("a value of " + option.name(), value));
    }
  }

  @Test
  final void required_104_it_has_a_public_constructor_without_parameters() {
    Class<?> type = exporter().getClass();
    assertTrue(Modifier.isPublic(type.getModifiers()), type + " is not public");
    assertDoesNotThrow(
        () -> type.getConstructor(), () -> type + " has no public constructor without parameters");
  }

  @Test
  final void required_105_it_is_named_in_its_service_file() {
    Class<?> type = exporter().getClass();
    assertTrue(
        ServiceLoader.load(Exporter.class, type.getClassLoader()).stream()
            .anyMatch(provider -> provider.type().equals(type)),
        type.getName() + " is not in META-INF/services/" + Exporter.class.getName());
  }

  @Test
  final void required_106_being_listed_loads_no_library() {
    assertEquals(List.of(), ListingWatcher.librariesLoadedBy(exporter().getClass()));
  }

  @Test
  final void required_201_names_are_safe_and_used_once() {
    for (Plan plan : anyPlan()) {
      RecordingDestination destination = new RecordingDestination();
      Throwable thrown = thrownBy(plan, destination);
      assertEquals(List.of(), destination.faults(), () -> "when " + plan.title() + " is written");
      assertEquals(null, thrown);
    }
  }

  @Test
  final void required_202_a_full_plan_gives_a_file() {
    assertFalse(written(SamplePlans.everyKind()).isEmpty(), "no file was written");
  }

  @Test
  final void required_203_nothing_but_the_destination_is_touched() {
    Surroundings before = Surroundings.now();
    String printed = Surroundings.printedDuring(() -> written(SamplePlans.everyKind()));
    assertEquals("", printed, "printed");
    assertEquals(before.workingDirectory(), Surroundings.now().workingDirectory());
  }

  @Test
  final void required_301_a_second_export_gives_the_same_bytes() {
    Exporter exporter = exporter();
    for (Plan plan : SamplePlans.examples()) {
      Map<String, String> first = written(exporter, plan, Map.of());
      assertEquals(first, written(exporter, plan, Map.of()), "the same exporter again");
      assertEquals(first, written(plan), "a new exporter");
    }
  }

  @Test
  final void required_302_several_threads_at_once_give_the_same_bytes() {
    Exporter shared = exporter();
    Plan plan = SamplePlans.everyKind();
    Map<String, String> alone = written(plan);
    Callable<Map<String, String>> task = () -> written(shared, plan, Map.of());
    AtOnce.run(THREADS, task).forEach(together -> assertEquals(alone, together));
  }

  @Test
  final void required_303_locale_and_time_zone_make_no_difference() {
    Plan plan = SamplePlans.everyKind();
    Map<String, String> here = written(plan);
    Supplier<Map<String, String>> again = () -> written(plan);
    assertEquals(
        here, Surroundings.in(Locale.forLanguageTag("tr-TR"), "Pacific/Apia", again), "in Apia");
    assertEquals(
        here,
        Surroundings.in(Locale.forLanguageTag("ar-EG-u-nu-arab"), "America/St_Johns", again),
        "with Arabic digits");
  }

  @Test
  final void required_304_locale_time_zone_and_properties_are_left_alone() {
    written(SamplePlans.everyKind());
    Surroundings before = Surroundings.now();
    written(SamplePlans.everyKind());
    assertEquals(before, Surroundings.now());
  }

  @Test
  final void required_401_every_example_can_be_written() {
    assertAllWritten(SamplePlans.examples());
  }

  @Test
  final void required_402_odd_titles_can_be_written() {
    assertAllWritten(ODDLY_TITLED);
  }

  @Test
  final void required_403_a_plan_without_a_jig_can_be_written() {
    assertAllWritten(SamplePlans.examples().stream().map(SamplePlans::withoutJig).toList());
  }

  @Test
  final void required_404_a_plan_without_sheets_can_be_written() {
    assertAllWritten(SamplePlans.examples().stream().map(SamplePlans::withoutDrawings).toList());
  }

  @Test
  final void required_405_a_bare_assembly_can_be_written() {
    assertAllWritten(SamplePlans.examples().stream().map(SamplePlans::bare).toList());
  }

  @Test
  final void required_406_every_kind_can_be_written() {
    assertAllWritten(List.of(SamplePlans.everyKind()));
  }

  @Test
  final void required_501_every_value_of_every_option_works() {
    Plan plan = SamplePlans.everyKind();
    for (Map<String, String> choice : everyChoice()) {
      Map<String, String> first = written(exporter(), plan, choice);
      assertEquals(first, written(exporter(), plan, choice), () -> "again with " + choice);
    }
  }

  @Test
  final void required_502_only_declared_options_are_asked_for() {
    List<Map<String, String>> choices = new ArrayList<>(everyChoiceButDefaults());
    choices.add(Map.of());
    List<Plan> plans = anyPlan();
    for (Map<String, String> choice : choices) {
      for (Plan plan : plans) {
        assertDoesNotThrow(
            () -> export(exporter(), plan, choice, new RecordingDestination()),
            () -> "with the options " + choice);
      }
    }
  }

  @Test
  final void optional_503_every_value_changes_the_bytes() {
    Plan plan = SamplePlans.everyKind();
    Map<String, String> plain = written(plan);
    for (Map<String, String> choice : everyChoiceButDefaults()) {
      Assumptions.assumeFalse(
          plain.equals(written(exporter(), plan, choice)), () -> choice + " changes nothing");
    }
  }

  @Test
  final void required_601_a_full_disk_is_passed_on() {
    assertAll(() -> assertPassesOn(false), () -> assertPassesOn(true));
  }

  @Test
  final void required_602_after_a_full_disk_the_next_export_is_right() {
    Exporter exporter = exporter();
    Plan plan = SamplePlans.everyKind();
    assertThrows(
        Exception.class, () -> export(exporter, plan, Map.of(), new FailingDestination(true)));
    assertEquals(written(plan), written(exporter, plan, Map.of()));
  }

  @Test
  final void required_701_what_is_opened_is_closed() {
    Assumptions.assumeTrue(Surroundings.countsOpenFiles(), "open files are not counted here");
    written(SamplePlans.everyKind());
    long before = Surroundings.openFiles();
    for (int i = 0; i < EXPORTS_TO_SEE_A_LEAK; i++) {
      written(SamplePlans.everyKind());
    }
    long left = Surroundings.openFiles() - before;
    assertTrue(
        left < EXPORTS_TO_SEE_A_LEAK,
        () -> left + " files are left open by " + EXPORTS_TO_SEE_A_LEAK + " exports");
  }

  @Test
  final void required_702_no_thread_is_left_running() {
    Set<Thread> before = Surroundings.lastingThreads();
    written(SamplePlans.everyKind());
    Set<Thread> left = new HashSet<>(Surroundings.lastingThreads());
    left.removeAll(before);
    assertEquals(Set.of(), left);
  }

  private void assertPassesOn(boolean whileWriting) {
    Plan plan = SamplePlans.everyKind();
    assertThrows(
        FailingDestination.DiskFull.class,
        () -> export(exporter(), plan, Map.of(), new FailingDestination(whileWriting)),
        whileWriting ? "while a file is written" : "before a file is written");
  }

  private void assertAllWritten(List<Plan> plans) {
    assertFalse(plans.isEmpty());
    assertAll(
        plans.stream()
            .map(
                plan ->
                    () ->
                        assertDoesNotThrow(
                            () -> export(exporter(), plan, Map.of(), new RecordingDestination()),
                            () -> "when '" + plan.title() + "' is written")));
  }

  private Throwable thrownBy(Plan plan, RecordingDestination destination) {
    try {
      export(exporter(), plan, Map.of(), destination);
      return null;
    } catch (ExportException | IOException | RuntimeException e) {
      return e;
    }
  }

  private Map<String, String> written(Plan plan) {
    return written(exporter(), plan, Map.of());
  }

  /** Name and content of every file; content as text that shows where two differ. */
  private static Map<String, String> written(
      Exporter exporter, Plan plan, Map<String, String> choice) {
    RecordingDestination destination = new RecordingDestination();
    assertDoesNotThrow(() -> export(exporter, plan, choice, destination));
    Map<String, String> files = new TreeMap<>();
    destination.names().forEach(name -> files.put(name, destination.latin1(name)));
    return files;
  }

  private static void export(
      Exporter exporter, Plan plan, Map<String, String> choice, Destination destination)
      throws ExportException, IOException {
    exporter.export(plan, OptionValues.of(exporter.options(), choice), destination);
  }

  private List<Map<String, String>> everyChoice() {
    return exporter().options().stream()
        .flatMap(option -> option.values().stream().map(value -> Map.of(option.name(), value)))
        .toList();
  }

  private List<Map<String, String>> everyChoiceButDefaults() {
    return exporter().options().stream()
        .flatMap(
            option -> option.values().stream().skip(1).map(value -> Map.of(option.name(), value)))
        .toList();
  }

  private static List<Plan> anyPlan() {
    List<Plan> plans = new ArrayList<>(SamplePlans.examples());
    plans.addAll(ODDLY_TITLED);
    plans.add(SamplePlans.bare(SamplePlans.everyKind()));
    return plans;
  }

  private static void assertOneLine(String what, String text) {
    assertTrue(
        !text.isBlank() && text.lines().count() == 1 && text.equals(text.strip()),
        () -> what + " is '" + text + "'");
  }

  private static void assertDistinct(String what, List<String> all) {
    assertEquals(all.size(), Set.copyOf(all).size(), () -> what + " repeat: " + all);
  }
}
