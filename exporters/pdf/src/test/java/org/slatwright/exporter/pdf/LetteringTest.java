package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.export.ExportException;
import org.slatwright.testkit.SamplePlans;

/** Lettering that can be found and copied. */
class LetteringTest {

  private static final PaperPoint PLACE = new PaperPoint(20, 100);
  private static final double CAPITALS = 3.5;
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final int LINE = 20;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "4 3/8\" × ½ ø10 ±⅜°",
        "1¼ ⅛ ⅝ ⅞ ⅓ ⅔ ¹³⁄₁₆",
        "officers fit ffi fl",
        "Kiefernständer Ærø Żółw",
        "<b>&amp;\\(paren) %%u"
      })
  void whatTheFontHasIsReadBack(String text) throws ExportException, IOException {
    assertEquals(text, text(letters(text)));
  }

  @Test
  void everyCharacterOfTheFontIsFound() throws ExportException, IOException {
    List<String> lines = everyCharacter();
    Figure[] figures =
        IntStream.range(0, lines.size())
            .mapToObj(
                i ->
                    new Figure.Text(
                        new PaperPoint(20, 200 - 4 * i), 2.5, lines.get(i), Align.START, 0))
            .toArray(Figure[]::new);
    String read = text(figures);
    List<String> lost =
        lines.stream()
            .flatMapToInt(String::codePoints)
            .mapToObj(Character::toString)
            .filter(character -> !read.contains(character))
            .toList();
    assertEquals(List.of("ﬁ", "ﬂ"), lost, "PDFBox reads these two as their letters");
  }

  private static List<String> everyCharacter() {
    int[] all =
        IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
            .filter(Lettering::has)
            .filter(character -> !Character.isWhitespace(character))
            .toArray();
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < all.length; from += LINE) {
      lines.add(
          Arrays.stream(all, from, Math.min(from + LINE, all.length))
              .mapToObj(Character::toString)
              .collect(Collectors.joining()));
    }
    return lines;
  }

  @ParameterizedTest
  @ValueSource(strings = {"رف الشتلات", "苗", "🌱 for 👩‍🌾", "two\nlines\tand a tab"})
  void whatTheFontLacksIsSaidWhereItsSignStands(String text) throws ExportException, IOException {
    String lacking =
        text.codePoints()
            .filter(character -> !Lettering.has(character))
            .mapToObj(Character::toString)
            .collect(Collectors.joining());
    assertEquals(lacking, meant(letters("a " + text + " z")));
  }

  @Test
  void halfACharacterCannotBeSaid() throws ExportException, IOException {
    assertEquals("\uFFFD", meant(letters("\uD83C")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"frame ", "4 3/8\" × ", "رف الشتلات ", "🌱🌱🌱 ", "苗 for 👩‍🌾 "})
  void textRunsAsFarAsTheLayoutReckoned(String text) throws ExportException, IOException {
    List<TextPosition> positions = positions(letters(text + "z"));
    TextPosition last = positions.get(positions.size() - 1);
    assertEquals("z", last.getUnicode());
    assertEquals(
        PLACE.x() + Lettering.width(text, CAPITALS), last.getXDirAdj() / POINTS_PER_MM, 0.001);
  }

  @Test
  void theFontIsEmbeddedInPart() throws ExportException, IOException {
    byte[] file = Exported.files(SamplePlans.everyKind()).bytes(Exported.PLAN);
    try (PDDocument document = Loader.loadPDF(file)) {
      PDResources resources = document.getPage(0).getResources();
      for (COSName name : resources.getFontNames()) {
        PDFont font = resources.getFont(name);
        assertTrue(font.isEmbedded());
        assertTrue(font.getName().matches("[A-Z]{6}\\+IBMPlexSansCond"), font.getName());
      }
    }
    assertTrue(file.length < 10_000, "a part is small: " + file.length);
  }

  /** All that stands for something else, joined. */
  private static String meant(Figure figure) throws ExportException, IOException {
    byte[] file = Exported.files(Exported.planOf(figure)).bytes(Exported.PLAN);
    try (PDDocument document = Loader.loadPDF(file)) {
      return new PDFStreamParser(document.getPage(0))
          .parse().stream()
              .filter(COSDictionary.class::isInstance)
              .map(span -> ((COSDictionary) span).getString(COSName.ACTUAL_TEXT))
              .collect(Collectors.joining());
    }
  }

  private static List<TextPosition> positions(Figure figure) throws ExportException, IOException {
    List<TextPosition> all = new ArrayList<>();
    byte[] file = Exported.files(Exported.planOf(figure)).bytes(Exported.PLAN);
    try (PDDocument document = Loader.loadPDF(file)) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition position) {
          all.add(position);
        }
      }.getText(document);
    }
    return all;
  }

  private static Figure letters(String text) {
    return new Figure.Text(PLACE, CAPITALS, text, Align.START, 0);
  }

  private static String text(Figure... figures) throws ExportException, IOException {
    byte[] file = Exported.files(Exported.planOf(figures)).bytes(Exported.PLAN);
    try (PDDocument document = Loader.loadPDF(file)) {
      return new PDFTextStripper().getText(document).strip();
    }
  }
}
