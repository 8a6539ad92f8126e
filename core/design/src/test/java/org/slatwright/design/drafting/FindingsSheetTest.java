package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.jig.MadeJig;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.takeoff.TakeOff;

class FindingsSheetTest {

  private static final String SEED_CABINET =
      """
      slatwright: 1
      title: "%s"
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
      rack: { interior-width: 580, rail-length: 320, upright: 900 }
      slats: { per-shelf: 3 }
      shop: { paper: %s }
      """;

  private static final MadeJig NO_JIG = new MadeJig(Optional.empty(), Optional.empty(), List.of());

  private static final String LONG =
      "the slats bend more under the load than looks safe, and more yet when the load stays for"
          + " years, since wood creeps";

  @Test
  void whatMustChangeComesBeforeNumbersAndTheseBeforeCautions() throws Exception {
    List<Sheet> sheets =
        sheets(
            "A4",
            "Seeds",
            List.of(
                finding(Severity.ERROR, "slat-sag", "slat S", LONG),
                finding(Severity.NOTE, "caution", "tipping", "Anchor the rack."),
                finding(Severity.NOTE, "clamp-opening", "frame", "clamps must open")));

    assertEquals(1, sheets.size());
    String text = text(sheets);
    assertInOrder(
        text,
        "ERROR, slat S:",
        "3.2 mm, at most 2.9 mm",
        "slats 21 mm thick",
        "clamps must open",
        "Tipping: Anchor the rack. [EN 16122]");
  }

  @Test
  void aRackWithNothingToChangeSaysSo() throws Exception {
    List<Finding> note = List.of(finding(Severity.NOTE, "bit-reach", "dowel bit", "it reaches"));

    assertTrue(text(sheets("A4", "Seeds", note)).contains("no error and no warning"));
  }

  @Test
  void aNumberThatMissesItsLimitIsMarkedAndKeepsItsAdviceThoughOnlyANote() throws Exception {
    List<Finding> note = List.of(finding(Severity.NOTE, "bit-reach", "dowel bit", "it reaches"));

    assertInOrder(
        text(sheets("A4", "Seeds", note)),
        "it reaches. Advice: slats 21 mm thick",
        "3.2 mm",
        "at most 2.9 mm (not met)");
  }

  @Test
  void coverAndFirstSheetSayWhichSheetTellsWhatMustChange() throws Exception {
    Finding error = finding(Severity.ERROR, "slat-sag", "slat S", LONG);
    Finding warning = finding(Severity.WARNING, "slat-sag", "slat S", LONG);
    Finding note = finding(Severity.NOTE, "slat-sag", "slat S", LONG);

    List<Sheet> all = allSheets("A4", "Seeds", List.of(error, warning));
    int number = all.size() - 1;
    assertEquals(name(number), all.get(number).name());
    String both = "ERRORS were found: see sheet " + number + " before building.";
    assertInOrder(text(all.subList(0, 2)), both, "Notes", both);
    String one = "Warnings: see sheet " + number + ".";
    assertInOrder(
        text(allSheets("A4", "Seeds", List.of(warning)).subList(0, 2)), one, "Notes", one);
    assertFalse(text(allSheets("A4", "Seeds", List.of(note)).subList(0, 2)).contains("see sheet"));
  }

  @Test
  void withNoFindingThereIsNoSheet() throws Exception {
    assertEquals(List.of(), sheets("A4", "Seeds", List.of()));
  }

  @Test
  void whatDoesNotFitGoesOnOnFurtherSheets() throws Exception {
    List<Finding> many =
        IntStream.rangeClosed(1, 90)
            .mapToObj(i -> finding(Severity.WARNING, "slat-sag", "slat S" + i, LONG))
            .toList();

    List<Sheet> sheets = sheets("A4", "Seeds", many);

    assertTrue(sheets.size() > 1, () -> sheets.size() + " sheets");
    int last = allSheets("A4", "Seeds", many).size() - 1;
    assertEquals(name(last - 1), sheets.get(sheets.size() - 2).name());
    assertEquals(name(last), sheets.get(sheets.size() - 1).name());
    assertTrue(text(sheets).contains("(continued)"));
    String[] all = many.stream().map(f -> "slat S" + number(f) + ":").toArray(String[]::new);
    assertInOrder(text(sheets), all);
  }

  private static String number(Finding finding) {
    return finding.subject().replace("slat S", "");
  }

  /** Right-to-left titles, with names of their own among the findings, on every paper. */
  @Property(tries = 80)
  void everyTextLiesInsideTheFrameAndClearOfEveryOther(
      @ForAll("papers") String paper,
      @ForAll("titles") String title,
      @ForAll("findings") List<Finding> findings)
      throws Exception {
    for (Sheet sheet : sheets(paper, title, findings)) {
      Tidy.check(sheet);
    }
  }

  /** Every word of what must change, and every caution, is on some sheet. */
  @Property(tries = 40)
  void nothingThatMustChangeIsLeftOut(
      @ForAll("papers") String paper, @ForAll("findings") List<Finding> findings) throws Exception {
    String text = withoutSpaces(text(sheets(paper, "Seeds", findings)));
    for (Finding finding : findings) {
      if (finding.severity() != Severity.NOTE || finding.rule().equals("caution")) {
        assertTrue(
            text.contains(withoutSpaces(finding.message())), () -> finding + " is not in " + text);
      }
    }
  }

  private static String withoutSpaces(String text) {
    return text.replaceAll("\\s+", "");
  }

  @Provide
  Arbitrary<String> papers() {
    return Arbitraries.of("A4", "A3", "letter", "tabloid");
  }

  @Provide
  Arbitrary<String> titles() {
    return Arbitraries.of(
        "Seeds",
        "رف لتجفيف الأعشاب في البيت الزجاجي الكبير",
        "ארון לזרעים של הגינה הקהילתית",
        "A very long title indeed for a rack that holds seeds, pots, trays and whatever else");
  }

  @Provide
  Arbitrary<List<Finding>> findings() {
    Arbitrary<String> words =
        Arbitraries.of("slats", "sag", "under", LONG, "رف", "37.6 mm", "too", "W".repeat(60))
            .list()
            .ofMinSize(1)
            .ofMaxSize(6)
            .map(list -> String.join(" ", list));
    Arbitrary<String> perhaps = Arbitraries.oneOf(Arbitraries.just(""), words);
    return Combinators.combine(
            Arbitraries.of(Severity.values()),
            Arbitraries.of("caution", "slat-sag"),
            words,
            words,
            perhaps,
            perhaps,
            perhaps,
            perhaps)
        .as(Finding::new)
        .map(FindingsSheetTest::noted)
        .list()
        .ofMaxSize(60)
        .map(list -> list.stream().sorted(Comparator.comparing(Finding::severity)).toList());
  }

  /** Cautions are notes without numbers. */
  private static Finding noted(Finding finding) {
    return finding.rule().equals("caution")
        ? new Finding(
            Severity.NOTE,
            "caution",
            finding.subject(),
            finding.message(),
            "",
            "",
            "",
            finding.source())
        : finding;
  }

  private static Finding finding(Severity severity, String rule, String subject, String message) {
    boolean caution = rule.equals("caution");
    return new Finding(
        severity,
        rule,
        subject,
        message,
        caution ? "" : "3.2 mm",
        caution ? "" : "at most 2.9 mm",
        caution ? "" : "slats 21 mm thick",
        "EN 16122");
  }

  private static List<Sheet> sheets(String paper, String title, List<Finding> findings)
      throws RackFileException {
    return allSheets(paper, title, findings).stream()
        .filter(sheet -> sheet.title().equals(FindingsSheet.TITLE))
        .toList();
  }

  private static List<Sheet> allSheets(String paper, String title, List<Finding> findings)
      throws RackFileException {
    byte[] file = SEED_CABINET.formatted(title, paper).getBytes(StandardCharsets.UTF_8);
    Rack rack = Sizing.solve(RackFileReader.read(file, "rack.yaml", List.of()));
    Assembly assembly = Framing.frame(rack);
    return Drafting.sheets(
        rack,
        assembly,
        TakeOff.of(assembly, rack),
        NO_JIG,
        CuttingPlan.NONE,
        OrderOfWork.NONE,
        findings);
  }

  private static String name(int number) {
    return String.format(Locale.ROOT, "drawings/%02d-checks-and-cautions", number);
  }

  /** Of every view, line after line, as it is read. */
  private static String text(List<Sheet> sheets) {
    List<String> lines = new ArrayList<>();
    sheets.stream()
        .flatMap(sheet -> Stream.of(Inked.of(sheet)))
        .flatMap(inked -> inked.words().stream())
        .forEach(words -> lines.add(words.text()));
    return String.join(" ", lines);
  }

  private static void assertInOrder(String text, String... parts) {
    int from = 0;
    for (String part : parts) {
      int at = text.indexOf(part, from);
      assertTrue(at >= 0, () -> "'" + part + "' is not where it belongs in " + text);
      from = at;
    }
  }
}
