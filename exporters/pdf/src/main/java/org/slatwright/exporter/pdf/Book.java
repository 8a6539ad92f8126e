package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Sheet;

/** A PDF document under construction: pages, bookmarks, and in the end its bytes. */
final class Book implements AutoCloseable {

  /** The first that has every viewer preference used here. */
  private static final float VERSION = 1.7f;

  /** Takes the place of the clock in the document's id. The title goes into it as well. */
  private static final long NO_TIME = 0;

  private static final String LANGUAGE = "en";
  private static final String MAKER = "Slatwright";

  private final PDDocument document = new PDDocument();
  private final PDViewerPreferences viewer = new PDViewerPreferences();
  private final PDDocumentOutline bookmarks = new PDDocumentOutline();
  private final PDFont font;
  private PDOutlineNode part = bookmarks;

  /** Without pages. */
  Book(String title) throws IOException {
    document.setVersion(VERSION);
    document.setDocumentId(NO_TIME);
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setCreator(MAKER);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(LANGUAGE);
    catalog.setDocumentOutline(bookmarks);
    catalog.setViewerPreferences(viewer);
    viewer.setDisplayDocTitle(true);
    viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    viewer.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
    font = openFont();
  }

  /** Advises a printer that prints both sides not to: what is cut out has nothing on its back. */
  void printOnOneSide() {
    viewer.setDuplex(PDViewerPreferences.DUPLEX.Simplex);
  }

  /** The pages to come stand under a bookmark of their own. */
  void beginPart(String title) {
    PDOutlineItem heading = new PDOutlineItem();
    heading.setTitle(title);
    bookmarks.addLast(heading);
    part = heading;
  }

  /** A page at the end, with its bookmark. */
  void add(Sheet sheet, Stretch stretch) throws IOException {
    PageFrame frame = PageFrame.of(sheet, stretch);
    PDPage page = new PDPage(frame.paper());
    page.setCropBox(frame.paper());
    page.setTrimBox(frame.paper());
    document.addPage(page);
    addBookmark(sheet.title(), page);
    try (PDPageContentStream content =
        new PDPageContentStream(document, page, AppendMode.OVERWRITE, true)) {
      new PageWriter(content, frame, font).write(sheet);
    }
  }

  /** The whole document, once. */
  void writeTo(OutputStream out) throws IOException {
    document.save(out);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }

  private void addBookmark(String title, PDPage page) {
    PDPageFitDestination whole = new PDPageFitDestination();
    whole.setPage(page);
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(title);
    item.setDestination(whole);
    part.addLast(item);
    part.openNode();
  }

  /** To be embedded in part. Without ligatures, since text was laid out letter by letter. */
  private PDFont openFont() throws IOException {
    try (InputStream file = Lettering.openFont()) {
      TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(file));
      document.registerTrueTypeFontForClosing(letters);
      letters.setEnableGsub(false);
      return PDType0Font.load(document, letters, true);
    }
  }
}
