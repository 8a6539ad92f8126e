package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.OutsideTool;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;

/** Readers outside the project take every book without a complaint. */
class OutsideReadersTest {

  @TempDir private Path folder;

  @Test
  void qpdfFindsNothingWrong() throws Exception {
    OutsideTool qpdf = OutsideTool.thatRuns("qpdf", "--version");
    for (Path book : books()) {
      String said = qpdf.run("--check", book.toString());
      assertTrue(said.contains("No syntax or stream encoding errors found"), said);
    }
  }

  @Test
  void muPdfFindsNothingWrong() throws Exception {
    OutsideTool mutool = OutsideTool.thatRuns("mutool", "-v");
    for (Path book : books()) {
      String said = mutool.run("info", book.toString());
      assertFalse(said.contains("error:"), said);
      assertTrue(said.contains("IBMPlexSansCond") || book.endsWith(Exported.TEMPLATES), said);
    }
  }

  @Test
  void everyFontIsEmbeddedInPartWithItsCharacters() throws Exception {
    OutsideTool pdffonts = OutsideTool.thatRuns("pdffonts", "-v");
    for (Path book : books()) {
      List<String> fonts = pdffonts.run(book.toString()).lines().skip(2).toList();
      assertTrue(fonts.size() <= 1, () -> "one font serves all pages, not " + fonts);
      fonts.forEach(font -> assertTrue(font.matches(".* yes +yes +yes +\\d+ +0"), font));
    }
  }

  @Test
  void titlesAndFractionsCanBeCopied() throws Exception {
    OutsideTool pdftotext = OutsideTool.thatRuns("pdftotext", "-v");
    Path every = write("every", SamplePlans.everyKind()).get(0);
    String text = pdftotext.run("-enc", "UTF-8", every.toString(), "-");
    assertTrue(text.contains("4 3/8\" × ½ ⌀"), text);
    String odd = "Seedlings 🌱 under glass";
    Path titled = write("titled", SamplePlans.titled(odd)).get(0);
    assertTrue(pdftotext.run("-enc", "UTF-8", titled.toString(), "-").contains(odd));
  }

  @Test
  void popplerFindsTheBoxesOfThePaper() throws Exception {
    OutsideTool pdfinfo = OutsideTool.thatRuns("pdfinfo", "-v");
    Path book = write("every", SamplePlans.everyKind()).get(1);
    String said = pdfinfo.run("-box", book.toString());
    for (String box : List.of("MediaBox", "CropBox", "TrimBox")) {
      assertTrue(said.matches("(?s).*" + box + ": +0.00 +0.00 +595.28 +841.89\n.*"), said);
    }
    assertEquals(1, said.lines().filter("Title:           Every kind: templates"::equals).count());
  }

  /** Of every example, of one of every kind, and of titles that break careless writers. */
  private List<Path> books() throws ExportException, IOException {
    List<Plan> plans = new ArrayList<>(SamplePlans.examples());
    plans.add(SamplePlans.everyKind());
    SamplePlans.ODD_TITLES.forEach(title -> plans.add(SamplePlans.titled(title)));
    List<Path> books = new ArrayList<>();
    for (Plan plan : plans) {
      books.addAll(write(Integer.toString(books.size()), plan));
    }
    return books;
  }

  /** Into a folder of its own, in alphabetical order. */
  private List<Path> write(String name, Plan plan) throws ExportException, IOException {
    Path own = Files.createDirectories(folder.resolve(name));
    RecordingDestination written = Exported.files(plan);
    List<Path> books = new ArrayList<>();
    for (String file : written.names()) {
      books.add(Files.write(own.resolve(file), written.bytes(file)));
    }
    return books;
  }
}
