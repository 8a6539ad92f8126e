package org.slatwright.exporter.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.export.ExportException;
import org.slatwright.testkit.SamplePlans;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgStructureTest {

  /** NCName of Namespaces in XML 1.0, less what is not ASCII. */
  private static final Pattern NCNAME = Pattern.compile("[A-Za-z_][A-Za-z0-9._-]*");

  private static final PaperPoint HERE = new PaperPoint(20, 30);

  static List<String> oddTitles() {
    Stream<String> worse =
        Stream.of(
            "bell \u0007, escape \u001b, null \u0000 and not a character \uffff",
            "half an emoji \ud83c alone",
            "1 starts with a digit",
            "id with spaces, (brackets) & accents é");
    return Stream.concat(SamplePlans.ODD_TITLES.stream(), worse).toList();
  }

  @Test
  void theSheetHasItsTrueSizeAndOneUnitIsAMillimetre() throws ExportException, IOException {
    Element root = Exported.document(FigureSheet.sheet(), "font").getDocumentElement();
    assertEquals("297mm", root.getAttribute("width"));
    assertEquals("210mm", root.getAttribute("height"));
    assertEquals("0 0 297 210", root.getAttribute("viewBox"));
  }

  @Test
  void inchPaperIsWrittenToTheMicron() throws ExportException, IOException {
    Sheet letter = new Sheet("drawings/01-letter", "Letter", Paper.LETTER, false, List.of());
    Element root = Exported.document(letter, "font").getDocumentElement();
    assertEquals("215.9mm", root.getAttribute("width"));
    assertEquals("279.4mm", root.getAttribute("height"));
  }

  @Test
  void aReaderWhoCannotSeeItIsToldWhatItShows() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "font");
    Element root = document.getDocumentElement();
    assertEquals("img", root.getAttribute("role"));
    List<String> named =
        Stream.of(root.getAttribute("aria-labelledby").split(" "))
            .map(id -> byId(document, id).getTextContent())
            .toList();
    assertEquals(
        List.of("Potting bench & trays", "Kinds of line, Front view 1:10, Lettering"), named);
  }

  @Test
  void everyViewAndClusterIsAGroupWithItsTitleFirst() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "font");
    for (String[] expected :
        new String[][] {
          {"front", "Front view"}, {"U-1", "upright U-1"}, {"U-1-hole", "its hole"}
        }) {
      Element group = byId(document, expected[0]);
      assertEquals("g", group.getLocalName());
      Element first = (Element) group.getElementsByTagNameNS("*", "*").item(0);
      assertEquals("title", first.getLocalName());
      assertEquals(expected[1], first.getTextContent());
    }
    assertEquals(byId(document, "U-1"), byId(document, "U-1-hole").getParentNode());
  }

  @Test
  void aDimensionSaysItsExactLength() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "font");
    Element dimension =
        Exported.elements(document, "g").stream()
            .filter(group -> group.getAttribute("class").equals("dimension"))
            .findFirst()
            .orElseThrow();
    assertEquals("600.5", dimension.getAttribute("data-mm"));
  }

  @Test
  void circlesAndArcsStayTrueCurves() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "font");
    assertEquals(
        List.of("5", "20"),
        Exported.elements(document, "circle").stream().map(c -> c.getAttribute("r")).toList());
    List<String> arcs =
        Exported.elements(document, "path").stream()
            .map(path -> path.getAttribute("d"))
            .filter(d -> d.contains("A"))
            .toList();
    // From the right up to the top is SVG's negative angle direction, so its sweep flag is 0.
    assertEquals(List.of("M65 150 A15 15 0 0 0 50 135", "M50 132 A18 18 0 1 1 32 150"), arcs);
  }

  @Test
  void laterFiguresLieOnTopOfEarlierOnes() throws ExportException, IOException {
    Figure line = Figure.Polyline.line(HERE, HERE.moved(9, 0), LineKind.VISIBLE);
    Figure fill =
        new Figure.Fill(List.of(HERE, HERE.moved(5, 0), HERE.moved(0, 5)), Figure.Shade.PAPER);
    Sheet sheet = FigureSheet.of(line, new Figure.Cluster("c", "c", List.of(fill)), line);
    Document document = Exported.document(sheet, "font");
    List<String> drawn =
        Exported.elements(document, "*").stream()
            .map(element -> element.getAttribute("class"))
            .filter(styleClass -> styleClass.matches("(line|fill)-.*"))
            .toList();
    assertEquals(List.of("fill-paper", "line-visible", "fill-paper", "line-visible"), drawn);
  }

  @Test
  void everyClassThatIsUsedHasItsRuleWithTheWidthsAndDashesOfIso128() throws Exception {
    Document document = Exported.document(FigureSheet.sheet(), "font");
    String css = Exported.elements(document, "style").get(0).getTextContent();
    Set<String> used = new TreeSet<>();
    Exported.elements(document, "*").forEach(element -> used.add(element.getAttribute("class")));
    used.removeAll(Set.of("", "view", "cluster", "dimension"));
    used.forEach(styleClass -> assertTrue(css.contains("." + styleClass + "{"), styleClass));
    // ISO 128-2:2020, long-dashed dotted narrow line of 0.25 mm: 24 d, 3 d, 0.5 d, 3 d (memory).
    assertTrue(css.contains("stroke-width:0.25;stroke-dasharray:6 0.75 0.125 0.75}"), css);
  }

  @Test
  void idsThatAreTakenOrNotValidAreMadeSo() throws ExportException, IOException {
    Figure empty = new Figure.Cluster("title", "takes the id of the sheet's title", List.of());
    Figure again = new Figure.Cluster("U-1", "first", List.of());
    Figure odd = new Figure.Cluster("1 × <x>", "odd", List.of());
    Document document = Exported.document(FigureSheet.of(empty, again, again, odd), "font");
    assertEquals(
        List.of("title", "desc", "view", "title-2", "U-1", "U-1-2", "_1-x-"), ids(document));
  }

  @ParameterizedTest
  @MethodSource("oddTitles")
  void anyTitleGivesAWellFormedFileWithValidUniqueIds(String title) throws Exception {
    for (String text : List.of("font", "outlines")) {
      Document document = Exported.document(titled(title), text);
      List<String> ids = ids(document);
      ids.forEach(id -> assertTrue(NCNAME.matcher(id).matches(), id));
      assertEquals(ids.size(), new HashSet<>(ids).size(), () -> "repeated in " + ids);
      assertEquals(asXmlReadsIt(title), byId(document, "title").getTextContent());
    }
  }

  @Test
  void whatXmlCannotSayIsReplacedByTheReplacementCharacter() throws Exception {
    Document document = Exported.document(titled("a\u0000b\ud83cc\uffffd"), "font");
    assertEquals("a\ufffdb\ufffdc\ufffdd", byId(document, "title").getTextContent());
  }

  @Test
  void aLineThatTheFontCannotLetterStaysTextAmongOutlines() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "outlines");
    assertEquals(
        List.of("رف الشتلات 🌱"),
        Exported.elements(document, "text").stream().map(Element::getTextContent).toList());
  }

  @Test
  void outlinesKeepTheirWordsForAReaderWhoCannotSee() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "outlines");
    assertTrue(
        Exported.elements(document, "path").stream()
            .anyMatch(path -> path.getAttribute("aria-label").equals("<a & \"b\">")));
    assertFalse(styleOf(document).contains("@font-face"));
  }

  @Test
  void nothingIsFetchedFromElsewhereAndNoDoctypeIsNeeded() throws ExportException, IOException {
    Document document = Exported.document(FigureSheet.sheet(), "font");
    assertNull(document.getDoctype());
    assertEquals(List.of(), Exported.elements(document, "script"));
    assertEquals(List.of(), Exported.elements(document, "image"));
    Matcher urls = Pattern.compile("url\\((.{0,20})").matcher(styleOf(document));
    while (urls.find()) {
      assertEquals("data:font/ttf;base64", urls.group(1));
    }
  }

  private static String styleOf(Document document) {
    return Exported.elements(document, "style").get(0).getTextContent();
  }

  private static Sheet titled(String title) {
    Figure text = new Figure.Text(HERE, 3.5, title, Figure.Align.START, 0);
    View view =
        new View(
            title,
            title,
            Optional.empty(),
            List.of(new Figure.Cluster(title, title, List.of(text))));
    return new Sheet("drawings/01-odd", title, Paper.A4, true, List.of(view));
  }

  private static String asXmlReadsIt(String title) {
    return title
        .replaceAll("[\u0000-\u0008\u000b\u000c\u000e-\u001f\uffff]", "\ufffd")
        .replaceAll("(?<![\ud83c\ud83d])\ud83c(?![\udc00-\udfff])", "\ufffd");
  }

  private static List<String> ids(Document document) {
    return Exported.elements(document, "*").stream()
        .map(element -> element.getAttribute("id"))
        .filter(id -> !id.isEmpty())
        .toList();
  }

  private static Element byId(Document document, String id) {
    return Exported.elements(document, "*").stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no element has the id " + id));
  }
}
