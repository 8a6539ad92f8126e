package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.RandomRacks;

class SheetTest {

  private static final Path EXAMPLES = Path.of("../../examples/racks");

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** Every example, on every paper. */
  @ParameterizedTest
  @MethodSource("examples")
  void everySheetOfAnExampleIsTidy(Path example) throws Exception {
    for (Paper paper : Paper.values()) {
      Plan plan = plan(Files.readString(example), "shop.paper=" + paper.word());
      plan.sheets().forEach(sheet -> assertTidy(sheet, plan));
    }
  }

  @Property(tries = 60)
  void everySheetIsTidy(@ForAll("racks") String rack, @ForAll Paper paper) throws Exception {
    Plan plan = plan(rack, "shop.paper=" + paper.word());
    plan.sheets().forEach(sheet -> assertTidy(sheet, plan));
  }

  /** In the corner that the three views leave free, and clear of each with its dimensions. */
  @ParameterizedTest
  @MethodSource("examples")
  void theGeneralArrangementShowsTheRackAsOneSeesIt(Path example) throws Exception {
    Sheet sheet = plan(Files.readString(example)).sheets().get(1);
    View picture = view(sheet, "pictorial");
    for (String id : List.of("front", "side", "top", "notes", "parts-list", "title-block")) {
      for (Figure.Polyline line : Inked.of(view(sheet, id).figures()).lines()) {
        assertFalse(around(picture).intersects(around(line)), () -> id + " meets the picture");
      }
    }
  }

  private static View view(Sheet sheet, String id) {
    return sheet.views().stream().filter(view -> view.id().equals(id)).findFirst().orElseThrow();
  }

  private static Envelope around(View view) {
    Envelope around = new Envelope();
    Inked.of(view.figures()).lines().forEach(line -> around.expandToInclude(around(line)));
    return around;
  }

  private static Envelope around(Figure.Polyline line) {
    Envelope around = new Envelope();
    line.points().forEach(point -> around.expandToInclude(point.x(), point.y()));
    return around;
  }

  private static void assertTidy(Sheet sheet, Plan plan) {
    Tidy.check(sheet);
    Tidy.checkScales(sheet, plan.lengths().unit());
  }

  @Property(tries = 60)
  void everyNumberSaysTheLengthThatItMeasures(@ForAll("racks") String rack) throws Exception {
    Plan plan = plan(rack);
    for (Sheet sheet : plan.sheets()) {
      for (Figure.Dimension dimension : Inked.of(sheet).dimensions()) {
        String number = plan.lengths().number(dimension.value());
        assertTrue(
            dimension.text().equals(number)
                || dimension.text().equals("ø " + number)
                || dimension.text().endsWith("(= " + number + ")"),
            () -> dimension.text() + " is written where " + number + " is meant");
      }
    }
  }

  @Property(tries = 60)
  void theChainsOfTheGeneralArrangementAddUpToItsOverallSizes(@ForAll("racks") String rack)
      throws Exception {
    Plan plan = plan(rack);
    Sheet sheet = plan.sheets().get(1);
    for (String name : List.of("height", "width", "depth")) {
      Length total =
          plan.chains().stream()
              .filter(chain -> chain.name().equals(name))
              .findFirst()
              .orElseThrow()
              .total();
      assertTrue(
          Inked.of(sheet).dimensions().stream().anyMatch(d -> d.value().equals(total)),
          () -> name + " " + total + " is not on the sheet");
    }
    Length drawn =
        Inked.of(sheet).dimensions().stream()
            .map(Figure.Dimension::value)
            .reduce(Length.ZERO, Length::plus);
    Length expected =
        plan.chains().stream()
            .filter(chain -> List.of("height", "width", "depth").contains(chain.name()))
            .map(chain -> chain.total().times(isOneShelfAlone(chain) ? 1 : 2))
            .reduce(Length.ZERO, Length::plus);
    assertEquals(expected, drawn, "each chain and its overall dimension");
  }

  /** A chain of one shelf without foot or top is its own overall dimension. */
  private static boolean isOneShelfAlone(Chain chain) {
    return chain.links().stream().allMatch(link -> List.of("rail", "slat").contains(link.name()));
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.solvable();
  }

  static Plan plan(String rack, String... settings) throws RackFileException {
    return Planner.plan(
        RackFileReader.read(rack.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of(settings)));
  }
}
