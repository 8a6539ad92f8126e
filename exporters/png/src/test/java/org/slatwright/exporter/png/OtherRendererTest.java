package org.slatwright.exporter.png;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.pdf.PdfExporter;
import org.slatwright.testkit.OutsideTool;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;

/**
 * The pictures beside what another program, poppler, draws of the same sheets from another format:
 * nothing is missing, nothing is added, nothing lies elsewhere.
 */
class OtherRendererTest {

  private static final int DOTS_PER_INCH = 150;

  /** Darker than this is surely ink; paler than {@link #PALE} surely is not. */
  private static final int DARK = 80;

  private static final int PALE = 190;

  private static final int SHEETS = 3;

  /** Ours are one of 16 greys, so that a tint is darker. */
  private static final double INK_WITHIN = 0.1;

  @TempDir private Path folder;

  /** The first sheets of every example, and one of every figure. */
  static Stream<Plan> plans() {
    return Stream.concat(SamplePlans.examples().stream(), Stream.of(SamplePlans.everyKind()))
        .map(OtherRendererTest::firstSheets);
  }

  private static Plan firstSheets(Plan plan) {
    List<Sheet> sheets = plan.sheets().stream().limit(SHEETS).toList();
    return SamplePlans.withDrawings(plan, sheets, Templates.NONE);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everySheetLooksAsPopplerDrawsIt(Plan plan) throws Exception {
    List<Path> drawn = drawnByPoppler(plan);
    assertEquals(plan.sheets().size(), drawn.size());
    RecordingDestination files = Exported.files(plan, DOTS_PER_INCH);
    for (int i = 0; i < drawn.size(); i++) {
      String name = plan.sheets().get(i).name();
      Greys ours = Greys.read(files.bytes(name + ".png"));
      Greys theirs = Greys.read(Files.readAllBytes(drawn.get(i)));
      // It rounds up to whole dots, and a dot more is of no account.
      assertEquals(theirs.width(), ours.width(), 1, name);
      assertEquals(theirs.height(), ours.height(), 1, name);
      assertEquals(0, strays(ours, theirs), () -> "dots of ours alone in " + name);
      assertEquals(0, strays(theirs, ours), () -> "dots of poppler alone in " + name);
      assertEquals(1, ours.ink() / theirs.ink(), INK_WITHIN, () -> "ink of " + name);
    }
  }

  /** Page by page. */
  private List<Path> drawnByPoppler(Plan plan) throws Exception {
    PdfExporter exporter = new PdfExporter();
    RecordingDestination files = new RecordingDestination();
    exporter.export(plan, OptionValues.defaults(exporter.options()), files);
    Path book = folder.resolve("book.pdf");
    Files.write(book, files.bytes(Plan.PLAN_BOOK + ".pdf"));
    OutsideTool.thatRuns("pdftoppm", "-v")
        .run(
            "-r",
            Integer.toString(DOTS_PER_INCH),
            "-gray",
            "-png",
            book.toString(),
            folder.resolve("page").toString());
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> file.toString().endsWith(".png")).sorted().toList();
    }
  }

  /** How many dark dots of one have nothing but paper about them in the other. */
  private static int strays(Greys dark, Greys other) {
    int strays = 0;
    for (int y = 1; y < Math.min(dark.height(), other.height()) - 1; y++) {
      for (int x = 1; x < Math.min(dark.width(), other.width()) - 1; x++) {
        if (dark.at(x, y) < DARK && other.darkestAbout(x, y) > PALE) {
          strays++;
        }
      }
    }
    return strays;
  }
}
