package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

/** What is in which book, as PDFBox reads it back. */
class PdfExporterTest {

  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final Plan PLAN = SamplePlans.everyKind();

  @Test
  void thePlanBookHasEverySheetAndThenEveryTemplatePage() throws ExportException, IOException {
    List<Sheet> all =
        Stream.concat(PLAN.sheets().stream(), PLAN.templates().pages().stream()).toList();
    assertPagesAre(all, Exported.PLAN);
  }

  @Test
  void theTemplateBookHasTheTemplatePagesAlone() throws ExportException, IOException {
    assertPagesAre(PLAN.templates().pages(), Exported.TEMPLATES);
  }

  /** Every box is the paper, to 0.0001 mm. */
  private static void assertPagesAre(List<Sheet> sheets, String book)
      throws ExportException, IOException {
    try (PDDocument document = read(PLAN, book)) {
      assertEquals(sheets.size(), document.getNumberOfPages());
      for (int i = 0; i < sheets.size(); i++) {
        PDPage page = document.getPage(i);
        for (PDRectangle box : List.of(page.getMediaBox(), page.getCropBox(), page.getTrimBox())) {
          assertEquals(0, box.getLowerLeftX());
          assertEquals(0, box.getLowerLeftY());
          assertEquals(sheets.get(i).widthMm(), box.getWidth() / POINTS_PER_MM, 1e-4);
          assertEquals(sheets.get(i).heightMm(), box.getHeight() / POINTS_PER_MM, 1e-4);
        }
        assertTrue(page.getCOSObject().containsKey("TrimBox"));
      }
    }
  }

  @Test
  void withoutTemplatesThereIsNoTemplateBook() throws ExportException, IOException {
    Plan plan = Exported.plan(PLAN.sheets(), List.of());
    assertEquals(Set.of(Exported.PLAN), Exported.files(plan).names());
    assertEquals(List.of("Every figure", "Every figure"), bookmarks(plan, Exported.PLAN));
  }

  @Test
  void withoutSheetsThePlanBookHasTheTemplates() throws ExportException, IOException {
    Plan plan = Exported.plan(List.of(), PLAN.templates().pages());
    assertEquals(Set.of(Exported.PLAN, Exported.TEMPLATES), Exported.files(plan).names());
    assertEquals(
        List.of("Templates", "Templates > templates, page 1"), bookmarks(plan, Exported.PLAN));
  }

  @Test
  void withoutDrawingsThereIsNoBook() throws ExportException, IOException {
    assertEquals(Set.of(), Exported.files(SamplePlans.withoutDrawings(PLAN)).names());
  }

  @Test
  void everySheetHasItsBookmarkAndTemplatesStandTogether() throws ExportException, IOException {
    assertEquals(
        List.of("Every figure", "Every figure", "Templates", "Templates > templates, page 1"),
        bookmarks(PLAN, Exported.PLAN));
    assertEquals(List.of("templates, page 1"), bookmarks(PLAN, Exported.TEMPLATES));
  }

  @Test
  void aBookmarkLeadsToItsPage() throws ExportException, IOException {
    try (PDDocument document = read(PLAN, Exported.PLAN)) {
      List<PDPage> pages = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        PDOutlineItem leads = item.hasChildren() ? item.getFirstChild() : item;
        pages.add(leads.findDestinationPage(document));
      }
      assertEquals(List.of(document.getPage(0), document.getPage(1), document.getPage(2)), pages);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Exported.PLAN, Exported.TEMPLATES})
  void aReaderIsAskedToPrintAt100PercentOnPaperOfThatSize(String book)
      throws ExportException, IOException {
    try (PDDocument document = read(PLAN, book)) {
      PDViewerPreferences viewer = document.getDocumentCatalog().getViewerPreferences();
      assertEquals("None", viewer.getPrintScaling());
      assertTrue(viewer.getCOSObject().getBoolean("PickTrayByPDFSize", false));
      assertTrue(viewer.displayDocTitle());
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      assertEquals(1.7f, document.getVersion());
    }
  }

  @Test
  void templatesArePrintedOnOneSide() throws ExportException, IOException {
    try (PDDocument templates = read(PLAN, Exported.TEMPLATES);
        PDDocument plan = read(PLAN, Exported.PLAN)) {
      assertEquals("Simplex", templates.getDocumentCatalog().getViewerPreferences().getDuplex());
      assertEquals(null, plan.getDocumentCatalog().getViewerPreferences().getDuplex());
    }
  }

  @Test
  void aBookHasTheTitleOfThePlan() throws ExportException, IOException {
    assertEquals("Every kind", title(PLAN, Exported.PLAN));
    assertEquals("Every kind: templates", title(PLAN, Exported.TEMPLATES));
    for (String odd : SamplePlans.ODD_TITLES) {
      assertEquals(odd, title(SamplePlans.titled(odd), Exported.PLAN));
    }
  }

  @Test
  void booksOfDifferentPlansHaveDifferentIdsAndNoDates() throws ExportException, IOException {
    try (PDDocument one = read(PLAN, Exported.PLAN);
        PDDocument other = read(PLAN, Exported.TEMPLATES)) {
      assertFalse(one.getDocument().getDocumentID().equals(other.getDocument().getDocumentID()));
      assertEquals(null, one.getDocumentInformation().getCreationDate());
      assertEquals(null, one.getDocumentInformation().getModificationDate());
    }
  }

  private static String title(Plan plan, String book) throws ExportException, IOException {
    try (PDDocument document = read(plan, book)) {
      return document.getDocumentInformation().getTitle();
    }
  }

  private static List<String> bookmarks(Plan plan, String book)
      throws ExportException, IOException {
    try (PDDocument document = read(plan, book)) {
      return titles(document.getDocumentCatalog().getDocumentOutline(), "").toList();
    }
  }

  private static Stream<String> titles(PDOutlineNode parent, String before) {
    return StreamSupport.stream(parent.children().spliterator(), false)
        .flatMap(
            item ->
                Stream.concat(
                    Stream.of(before + item.getTitle()),
                    titles(item, before + item.getTitle() + " > ")));
  }

  private static PDDocument read(Plan plan, String book) throws ExportException, IOException {
    return Loader.loadPDF(Exported.files(plan).bytes(book));
  }
}
