package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.JoinedStrip;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.SeenPage;

/**
 * Template pages drawn at 600 dots an inch by Poppler and by MuPDF, readers outside the project:
 * lines and holes within 0.05 mm over a page, and hole to hole within 0.1 mm over a whole strip.
 *
 * <p>Every example and a random rack on every paper, in both units by turns: of each a page by
 * either program. The longest strip of every example is laid together from what MuPDF drew; Poppler
 * moves lines to whole dots, which would add up from tile to tile.
 */
class TrueTemplatesTest {

  @TempDir private Path folder;

  /**
   * A rack on some paper.
   *
   * @param number in turn
   */
  private record Case(int number, Paper paper, Unit unit, Supplier<Plan> plan) {

    @Override
    public String toString() {
      return number + " " + paper + " " + unit;
    }
  }

  static List<Case> everyRack() {
    List<Case> cases = new ArrayList<>();
    for (Paper paper : Paper.values()) {
      for (int i = 0; i < SamplePlans.examples().size(); i++) {
        Unit unit = turn(Unit.values(), i + paper.ordinal());
        cases.add(new Case(i, paper, unit, SamplePlans.examples(unit, paper).get(i)));
      }
      Unit unit = turn(Unit.values(), paper.ordinal());
      int seed = paper.ordinal();
      cases.add(new Case(cases.size(), paper, unit, () -> SamplePlans.random(seed, unit, paper)));
    }
    return cases;
  }

  @ParameterizedTest
  @MethodSource("everyRack")
  void pagesOfEveryRackAreTrue(Case rack) throws Exception {
    List<Sheet> pages = rack.plan().get().templates().pages();
    for (Renderer renderer : Renderer.values()) {
      int which = 7 * rack.number() + 5 * rack.paper().ordinal() + renderer.ordinal();
      seen(turn(pages, which), renderer).assertTrueToSize();
    }
  }

  /** A tenth of a millimetre in 150 is found. */
  @Test
  void aPageThatIsStretchedIsNot() throws Exception {
    Sheet page = SamplePlans.examples().get(0).templates().pages().get(0);
    SeenPage seen = seen(page, Renderer.MUPDF, Map.of("printed-length", "149.9 mm"));
    assertThrows(AssertionError.class, seen::assertTrueToSize);
  }

  static Stream<Case> strips() {
    return everyRack().stream()
        .filter(rack -> rack.number() % Paper.values().length == rack.paper().ordinal())
        .filter(rack -> rack.number() < SamplePlans.examples().size());
  }

  @ParameterizedTest
  @MethodSource("strips")
  void theLongestStripOfEveryExampleIsTrueWhenJoined(Case rack) throws Exception {
    Plan plan = rack.plan().get();
    Template strip =
        plan.templates().whole().stream()
            .filter(JoinedStrip::isStrip)
            .max(Comparator.comparing(Template::height))
            .orElseThrow();
    Map<Integer, SeenPage> pages = new HashMap<>();
    for (Template.Tile tile : strip.tiles()) {
      Sheet page = plan.templates().pages().get(tile.page());
      pages.put(tile.page(), seen(page, Renderer.MUPDF));
    }
    new JoinedStrip(strip, pages::get).assertTrueToSize();
  }

  private static <T> T turn(T[] all, int number) {
    return turn(List.of(all), number);
  }

  private static <T> T turn(List<T> all, int number) {
    return all.get(number % all.size());
  }

  private SeenPage seen(Sheet page, Renderer renderer)
      throws ExportException, IOException, InterruptedException {
    return seen(page, renderer, Map.of());
  }

  private SeenPage seen(Sheet page, Renderer renderer, Map<String, String> option)
      throws ExportException, IOException, InterruptedException {
    Path book = folder.resolve("book.pdf");
    Plan plan = Exported.plan(List.of(), List.of(page));
    Files.write(book, Exported.files(plan, option).bytes(Exported.TEMPLATES));
    return new SeenPage(page, renderer.draw(book, 1));
  }
}
