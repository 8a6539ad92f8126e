package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;

class JointSheetTest {

  /** A rack and its joint on a sheet. */
  private record Drawn(Rack rack, Assembly assembly, Sheet sheet) {

    static Drawn of(String yaml, String... settings) {
      try {
        byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
        Rack rack = Sizing.solve(RackFileReader.read(bytes, "rack.yaml", List.of(settings)));
        Assembly assembly = Framing.frame(rack);
        return new Drawn(rack, assembly, new JointSheet(rack, assembly).sheet(4, 9));
      } catch (RackFileException e) {
        throw new AssertionError(yaml, e);
      }
    }

    View view(String id) {
      return sheet.views().stream().filter(view -> view.id().equals(id)).findFirst().orElseThrow();
    }

    List<Figure.Dimension> dimensions(String id) {
      return Inked.of(view(id).figures()).dimensions();
    }

    double factor() {
      return view("joint-lengthwise").scale().orElseThrow().factor();
    }
  }

  @Property(tries = 60)
  void theLengthsAlongTheDowelAreThoseOfTheRack(@ForAll("racks") Drawn drawn) {
    Rack.DowelJoint joint = drawn.rack().joint();
    Length upright = drawn.rack().upright().depth();
    List<Length> told = values(drawn.dimensions("joint-lengthwise")).subList(0, 4);
    assertEquals(
        List.of(upright, joint.embedment(), joint.holeDepth(), upright.plus(joint.embedment())),
        told);
  }

  @Property(tries = 60)
  void theHeightsOfTheDowelsAddUpToTheRail(@ForAll("racks") Drawn drawn) {
    List<Length> told = values(drawn.dimensions("joint-across"));
    List<Length> expected = new ArrayList<>();
    Length at = Length.ZERO;
    for (Length height : drawn.rack().joint().heights()) {
      expected.add(height.minus(at));
      at = height;
    }
    expected.add(drawn.rack().rail().height().minus(at));
    expected.add(drawn.rack().rail().height());
    assertEquals(expected, told.subList(0, expected.size()));
  }

  @Property(tries = 60)
  void aFixingThatIsDrawnIsToldWholeAndAsDeepAsItIsInTheRail(@ForAll("racks") Drawn drawn) {
    List<Length> told = values(drawn.dimensions("joint-lengthwise"));
    if (told.size() > 4) {
      Length length = drawn.rack().fixing().length();
      Length slat = drawn.assembly().fasteners().get(0).through().part().shape().thickness();
      assertEquals(List.of(length.minus(slat), slat, length), told.subList(4, 7));
    }
  }

  @Property(tries = 60)
  void everyDimensionIsDrawnAsLongAsItSays(@ForAll("racks") Drawn drawn) {
    for (String id : List.of("joint-lengthwise", "joint-across")) {
      for (Figure.Dimension dimension : drawn.dimensions(id)) {
        List<PaperPoint> ends =
            dimension.drawn().stream()
                .filter(figure -> figure instanceof Figure.Polyline line && isOblique(line))
                .map(figure -> middle((Figure.Polyline) figure))
                .toList();
        assertEquals(2, ends.size());
        assertEquals(
            dimension.value().inMm() * drawn.factor(),
            Math.hypot(ends.get(0).x() - ends.get(1).x(), ends.get(0).y() - ends.get(1).y()),
            1e-6,
            dimension.text());
      }
    }
  }

  @Property(tries = 60)
  void dowelsAndTheRoomBehindThemAreNotHatchedAlongTheirAxes(@ForAll("racks") Drawn drawn) {
    View view = drawn.view("joint-lengthwise");
    List<PaperBox> dowels =
        view.figures().stream()
            .filter(figure -> figure instanceof Figure.Polyline line && line.closed())
            .map(figure -> box((Figure.Polyline) figure))
            .filter(box -> isLong(box, drawn))
            .toList();
    assertEquals(drawn.rack().joint().heights().size(), dowels.size());
    double gap =
        drawn.rack().joint().holeDepth().minus(drawn.rack().joint().embedment()).inMm()
            * drawn.factor();
    long hatches = 0;
    for (Figure figure : view.figures()) {
      if (figure instanceof Figure.Polyline line && isOblique(line)) {
        hatches++;
        for (PaperBox dowel : dowels) {
          PaperBox hole =
              new PaperBox(dowel.left(), dowel.bottom(), dowel.right() + gap, dowel.top());
          assertTrue(!hole.grown(-1e-3, -1e-3).contains(middle(line)), "hatching in the hole");
        }
      }
    }
    assertTrue(hatches > 30, "wood is hatched");
  }

  @Property(tries = 60)
  void dowelsAreHatchedAcrossAndTheRailOnlyAroundThem(@ForAll("racks") Drawn drawn) {
    View view = drawn.view("joint-across");
    List<Figure.Circle> dowels =
        view.figures().stream()
            .filter(figure -> figure instanceof Figure.Circle)
            .map(figure -> (Figure.Circle) figure)
            .toList();
    assertEquals(drawn.rack().joint().heights().size(), dowels.size());
    for (Figure.Circle dowel : dowels) {
      assertEquals(
          drawn.rack().joint().diameter().inMm() / 2 * drawn.factor(), dowel.radius(), 1e-6);
      TreeSet<Boolean> rising = new TreeSet<>();
      for (Figure figure : view.figures()) {
        if (figure instanceof Figure.Polyline line
            && isOblique(line)
            && distance(middle(line), dowel.centre()) < dowel.radius() - 1e-6) {
          PaperPoint from = line.points().get(0);
          PaperPoint to = line.points().get(1);
          rising.add((to.x() - from.x()) * (to.y() - from.y()) > 0);
          assertTrue(distance(from, dowel.centre()) < dowel.radius() + 1e-6);
          assertTrue(distance(to, dowel.centre()) < dowel.radius() + 1e-6);
        }
      }
      assertEquals(new TreeSet<>(List.of(true)), rising, "the rail's lines fall");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "seed-trays, A4, 1:1",
    "ware-boards, letter, 1:1",
    "nursery-bench, A3, 1:1",
    "nursery-bench, A4, 1:2",
    "drying-rack, A4, 1:1",
    "onion-store, tabloid, 1:1"
  })
  void anExampleIsDrawnFullSizeWhereThePaperAllows(String example, String paper, String scale)
      throws Exception {
    String yaml = Files.readString(Path.of("../../examples/racks", example + ".yaml"));
    Drawn drawn = Drawn.of(yaml, "shop.paper=" + paper);
    assertEquals(scale, drawn.view("joint-lengthwise").scale().map(Scale::toString).orElseThrow());
  }

  @Test
  void aRailOfOtherStockIsCentredOnTheUpright() {
    Drawn drawn =
        Drawn.of(
            """
            slatwright: 1
            title: Rack
            timber:
              frame: { section: 50 x 58 }
              rails: { section: 30 x 80 }
              slats: { section: 18 x 60 }
              dowel: { diameter: 12 }
            rack: { interior-width: 400, rail-length: 220, openings: [ 200 ] }
            slats: { per-shelf: 2 }
            joint: { dowels: 2 }
            """);
    List<Length> told = values(drawn.dimensions("joint-across"));
    assertTrue(
        told.containsAll(List.of(Length.mm(10), Length.mm(15), Length.mm(50))),
        () -> "10 beside the rail, 15 to the dowel, 50 over all: " + told);
  }

  @Provide
  Arbitrary<Drawn> racks() {
    return RandomRacks.solvable().map(Drawn::of);
  }

  private static List<Length> values(List<Figure.Dimension> dimensions) {
    return dimensions.stream().map(Figure.Dimension::value).toList();
  }

  /** As hatching and the strokes at the ends of dimensions are, at 45°. */
  private static boolean isOblique(Figure.Polyline line) {
    PaperPoint from = line.points().get(0);
    PaperPoint to = line.points().get(line.points().size() - 1);
    return line.points().size() == 2
        && line.line() != LineKind.CENTRE
        && Math.abs(Math.abs(to.x() - from.x()) - Math.abs(to.y() - from.y())) < 1e-6;
  }

  private static PaperPoint middle(Figure.Polyline line) {
    PaperPoint from = line.points().get(0);
    PaperPoint to = line.points().get(1);
    return new PaperPoint((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }

  private static double distance(PaperPoint a, PaperPoint b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  private static PaperBox box(Figure.Polyline closed) {
    PaperPoint low = closed.points().get(0);
    PaperPoint high = closed.points().get(2);
    return new PaperBox(low.x(), low.y(), high.x(), high.y());
  }

  private static boolean isLong(PaperBox box, Drawn drawn) {
    return Math.abs(box.width() - drawn.rack().joint().length().inMm() * drawn.factor()) < 1e-6;
  }
}
