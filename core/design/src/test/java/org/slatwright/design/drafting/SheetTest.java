package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.RandomRacks;

class SheetTest {

  private static final Path EXAMPLES = Path.of("../../examples/racks");

  /** ISO 5457: 20 mm to the left, 10 mm elsewhere; from memory. */
  private static final double BINDING = 20;

  private static final double MARGIN = 10;

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyTextOfAnExampleLiesInsideTheFrameAndClearOfEveryOther(Path example) throws Exception {
    for (Sheet sheet : plan(Files.readString(example)).sheets()) {
      assertInsideFrame(sheet);
      assertNoTextOnAnother(sheet);
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noNumberOfAnExampleIsCrossedByALineOfItsChains(Path example) throws Exception {
    for (Sheet sheet : plan(Files.readString(example)).sheets()) {
      assertNoNumberCrossed(sheet);
    }
  }

  @Property(tries = 60)
  void everyTextLiesInsideTheFrame(@ForAll("racks") String rack) throws Exception {
    plan(rack).sheets().forEach(SheetTest::assertInsideFrame);
  }

  @Property(tries = 60)
  void noTextLiesOnAnother(@ForAll("racks") String rack) throws Exception {
    plan(rack).sheets().forEach(SheetTest::assertNoTextOnAnother);
  }

  @Property(tries = 60)
  void everyNumberSaysTheLengthThatItMeasures(@ForAll("racks") String rack) throws Exception {
    Plan plan = plan(rack);
    for (Sheet sheet : plan.sheets()) {
      for (Figure.Dimension dimension : Inked.of(sheet).dimensions()) {
        String number = plan.lengths().number(dimension.value());
        assertTrue(
            dimension.text().equals(number) || dimension.text().endsWith("(= " + number + ")"),
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

  @Property(tries = 60)
  void noNumberIsCrossedByALineOfTheChains(@ForAll("racks") String rack) throws Exception {
    plan(rack).sheets().forEach(SheetTest::assertNoNumberCrossed);
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.solvable();
  }

  private static Plan plan(String rack) throws RackFileException {
    return Planner.plan(
        RackFileReader.read(rack.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of()));
  }

  static void assertInsideFrame(Sheet sheet) {
    Envelope frame =
        new Envelope(BINDING, sheet.widthMm() - MARGIN, MARGIN, sheet.heightMm() - MARGIN);
    for (Inked.Words words : Inked.of(sheet).words()) {
      assertTrue(
          frame.contains(words.room()),
          () -> sheet.name() + ": '" + words.text() + "' leaves the frame at " + words.room());
    }
  }

  static void assertNoTextOnAnother(Sheet sheet) {
    List<Inked.Words> words = Inked.of(sheet).words();
    for (int i = 0; i < words.size(); i++) {
      for (int j = i + 1; j < words.size(); j++) {
        Inked.Words one = words.get(i);
        Inked.Words other = words.get(j);
        Envelope shared = one.room().intersection(other.room());
        assertTrue(
            shared.getWidth() < 0.05 || shared.getHeight() < 0.05,
            () ->
                sheet.name()
                    + ": '"
                    + one.text()
                    + "' and '"
                    + other.text()
                    + "' overlap at "
                    + shared);
      }
    }
  }

  private static void assertNoNumberCrossed(Sheet sheet) {
    Inked inked = Inked.of(sheet);
    List<Figure.Polyline> ofChains =
        inked.dimensions().stream()
            .flatMap(dimension -> dimension.drawn().stream())
            .filter(figure -> figure instanceof Figure.Polyline)
            .map(figure -> (Figure.Polyline) figure)
            .toList();
    for (Inked.Words words : inked.words()) {
      for (Figure.Polyline line : ofChains) {
        Envelope room = new Envelope(words.room());
        room.expandBy(-0.1);
        assertTrue(
            !room.intersects(
                new Envelope(
                    line.points().get(0).x(),
                    line.points().get(1).x(),
                    line.points().get(0).y(),
                    line.points().get(1).y())),
            () -> sheet.name() + ": a line crosses '" + words.text() + "' at " + words.room());
      }
    }
  }
}
