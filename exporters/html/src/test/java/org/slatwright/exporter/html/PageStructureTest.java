package org.slatwright.exporter.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.Wording;

/** What stands in the page, for every kind of plan. */
class PageStructureTest {

  private static final int MOST_BYTES = 2_000_000;
  private static final String SVG = "http://www.w3.org/2000/svg";

  static List<Plan> plans() {
    return Written.plans();
  }

  /** WHATWG HTML, "Parse errors", as far as jsoup 1.22 knows them. */
  @ParameterizedTest
  @MethodSource("plans")
  void theSyntaxIsRight(Plan plan) throws Exception {
    assertEquals(List.of(), Written.errors(plan));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theTitleIsSaidAsItIsAndNothingMore(Plan plan) throws Exception {
    Document page = Written.document(plan);
    Element heading = page.select("h1").first();
    assertEquals(0, heading.children().size());
    String said = plan.title().isBlank() ? "Rack without a title" : plan.title();
    assertEquals(said, heading.wholeText());
    assertEquals("auto", heading.attr("dir"));
    assertEquals(1, page.select("script").size());
    assertEquals(1, page.select("style").size());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyCutLineStepFindingAndSheetAppears(Plan plan) throws Exception {
    Document page = Written.document(plan);
    for (CutLine line : plan.cutList()) {
      Element row = rowOfTick(page, "cut-" + line.part().mark());
      assertTrue(row.text().contains(line.part().mark() + " " + line.part().name()), row.text());
      String below = row.nextElementSibling().text();
      assertTrue(below.contains(line.timber()), below);
      assertTrue(below.contains(oneLine(line.note())), below);
      assertTrue(row.select("td").eachText().contains("" + line.part().quantity()), row.text());
      assertEquals(mm(line.part().shape().length()), row.select("data").first().attr("value"));
    }
    for (Step step : plan.work().steps()) {
      assertStep(page.select("#step-" + step.number()).first(), step);
    }
    for (Finding finding : plan.findings()) {
      String place = page.select("#findings, #checked").text();
      assertTrue(place.contains(oneLine(finding.message())), finding.message());
      assertTrue(place.contains(oneLine(finding.advice())), finding.advice());
    }
    assertEquals(
        plan.sheets().stream().map(Sheet::title).toList(),
        page.select("figure > .paper > svg > title").eachText());
  }

  private static void assertStep(Element shown, Step step) {
    assertEquals("Step " + step.number() + " " + step.title(), shown.select("h3").text());
    assertEquals(1, shown.select("h3 input[data-tick=step-" + step.id() + "]").size());
    for (Wording doing : step.doing()) {
      assertTrue(metric(shown).contains(doing.in(new LengthFormat(Unit.MM))), doing.words());
    }
    for (Wording supply : step.supplies()) {
      assertTrue(metric(shown).contains(supply.in(new LengthFormat(Unit.MM))), supply.words());
    }
    String check = "Check before you go on: " + step.check().in(new LengthFormat(Unit.MM));
    assertTrue(metric(shown).contains(check), check);
    assertTrue(shown.text().contains(step.caution()), step.caution());
    assertTrue(shown.text().contains(step.work().words()), shown.text());
    step.tools().forEach(tool -> assertTrue(shown.text().contains(tool), tool));
    step.then().ifPresent(wait -> assertTrue(shown.text().contains(wait.why()), wait.why()));
    for (Step.Parts parts : step.parts()) {
      String said = parts.count() + " × " + parts.mark();
      assertTrue(shown.text().contains(said), said);
    }
    for (int before : step.after()) {
      assertEquals(1, shown.select("a[href=#step-" + before + "]").size());
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyPurchaseBoardAndSettingAppears(Plan plan) throws Exception {
    Document page = Written.document(plan);
    for (Purchase purchase : plan.cutting().buying()) {
      assertTrue(page.select("#buying tbody").text().contains(purchase.what()), purchase.what());
    }
    List<CutBoard> boards =
        plan.cutting().timbers().stream().flatMap(timber -> timber.boards().stream()).toList();
    for (CutBoard board : boards) {
      Element row = rowOfTick(page, "board-" + String.join("-", board.marks()));
      Set<String> lengths = new TreeSet<>(row.select("data").eachAttr("value"));
      board.cuts().forEach(cut -> assertTrue(lengths.contains(mm(cut.length())), cut.mark()));
      board.offcuts().forEach(rest -> assertTrue(lengths.contains(mm(rest.length())), "rest"));
    }
    List<String> settings =
        plan.cutting().timbers().stream()
            .flatMap(timber -> timber.settings().stream())
            .map(StopSetting::length)
            .map(PageStructureTest::mm)
            .toList();
    assertEquals(settings, page.select("#stops tbody data").eachAttr("value"));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyLengthIsExactAndSpeltByTheApiInBothUnits(Plan plan) throws Exception {
    Document page = Written.document(plan);
    assertEquals(plan.lengths().unit().symbol(), page.select("html").attr("data-unit"));
    assertFalse(page.select("data").isEmpty());
    for (Element data : page.select("data")) {
      Length exact = parsed(data.attr("value"));
      for (Unit unit : Unit.values()) {
        LengthFormat format = new LengthFormat(unit);
        String shown = data.select(".in-" + unit.symbol()).text();
        assertTrue(
            Set.of(format.number(exact), format.withUnit(exact)).contains(shown),
            () -> exact + " is shown as " + shown);
      }
    }
  }

  /** The api's own reader takes no sign; a shortfall has one. */
  private static Length parsed(String mm) {
    boolean negative = mm.startsWith("-");
    Length size = new LengthGrammar(Unit.MM).read(negative ? mm.substring(1) : mm).orElseThrow();
    return negative ? size.negated() : size;
  }

  @ParameterizedTest
  @MethodSource("plans")
  void nothingIsAskedForOutsideThePage(Plan plan) throws Exception {
    Document page = Written.document(plan);
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        assertFalse(
            attribute.getValue().contains("//") && !attribute.getValue().equals(SVG),
            () -> element.tagName() + " " + attribute);
        if (Set.of("href", "src", "srcset", "action", "data", "xlink:href")
            .contains(attribute.getKey())) {
          assertTrue(attribute.getValue().matches("#.+|data:,"), attribute::toString);
        }
        assertFalse(attribute.getKey().startsWith("on"), attribute::toString);
        assertFalse(attribute.getKey().equals("style"), attribute::toString);
      }
    }
    String style = page.select("style").first().data();
    assertFalse(style.contains("@import"));
    assertFalse(style.replaceAll("url\\(data:font/ttf;base64,", "").contains("url("));
    assertFalse(page.select("script").first().data().matches("(?s).*(fetch|XMLHttp|import).*"));
  }

  /** Content Security Policy Level 3, section 8.4, and the hash by Java's own SHA-256. */
  @ParameterizedTest
  @MethodSource("plans")
  void thePolicyLetsNothingInButTheStyleAndTheScriptOfThePage(Plan plan) throws Exception {
    Document page = Written.document(plan);
    String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
    assertTrue(policy.startsWith("default-src 'none'; "), policy);
    assertTrue(policy.contains("style-src " + hash(page.select("style").first().data())), policy);
    assertTrue(policy.contains("script-src " + hash(page.select("script").first().data())), policy);
    assertFalse(policy.contains("unsafe"), policy);
  }

  private static String hash(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
  }

  @ParameterizedTest
  @MethodSource("plans")
  void idsAreUniqueAndWhatNamesOneFindsIt(Plan plan) throws Exception {
    Document page = Written.document(plan);
    List<String> ids = page.select("[id]").eachAttr("id");
    assertEquals(ids.stream().distinct().toList(), ids);
    List<String> ticks = page.select("[data-tick]").eachAttr("data-tick");
    assertEquals(ticks.stream().distinct().toList(), ticks);
    Set<String> named = new TreeSet<>();
    page.select("[aria-labelledby]").eachAttr("aria-labelledby").stream()
        .flatMap(list -> List.of(list.split(" ")).stream())
        .forEach(named::add);
    page.select("a[href]").eachAttr("href").forEach(href -> named.add(href.substring(1)));
    named.removeAll(ids);
    assertEquals(Set.of(), named);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyDrawingSaysWhatItShows(Plan plan) throws Exception {
    for (Element drawing : Written.document(plan).select("svg")) {
      assertEquals("img", drawing.attr("role"));
      String words =
          List.of(drawing.attr("aria-labelledby").split(" ")).stream()
              .map(id -> drawing.getElementById(id).text())
              .collect(Collectors.joining("|"));
      assertTrue(words.matches(".+\\|.+"), words);
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyTableHasACaptionAndHeads(Plan plan) throws Exception {
    for (Element table : Written.document(plan).select("table")) {
      assertFalse(table.select("caption").text().isBlank());
      assertEquals(table.select("thead th").size(), table.select("thead th[scope=col]").size());
      assertEquals(
          table.select("tbody tr:not(.below)").size(), table.select("tbody th[scope=row]").size());
      assertFalse(table.select("tbody tr").isEmpty());
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aPhoneTakesItEasily(Plan plan) throws Exception {
    int bytes = Written.page(plan).getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes < MOST_BYTES, bytes + " bytes");
  }

  private static Element rowOfTick(Document page, String tick) {
    return page.select("input").stream()
        .filter(box -> box.attr("data-tick").equals(tick))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no box " + tick))
        .closest("tr");
  }

  private static String mm(Length length) {
    return new LengthFormat(Unit.MM).number(length);
  }

  /** What is read while the page is in millimetres. */
  private static String metric(Element shown) {
    Element copy = shown.clone();
    copy.select(".in-in").remove();
    return copy.text();
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
