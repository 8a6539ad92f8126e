package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.sizing.RandomRacks;

class FrameSheetTest {

  private static final double EXACT = 1e-6;

  static List<Path> examples() throws Exception {
    return SheetTest.examples();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyHeightOfAnExampleIsThereAndTrue(Path example) throws Exception {
    assertHeights(SheetTest.plan(Files.readString(example)));
  }

  @Property(tries = 60)
  void everyHeightOfAnyRackIsThereAndTrue(@ForAll("racks") String rack, @ForAll Paper paper)
      throws Exception {
    assertHeights(SheetTest.plan(rack, "shop.paper=" + paper.word()));
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.solvable();
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void twentyShelvesReadOnEveryPaper(Paper paper) throws Exception {
    for (String rack :
        List.of(
            LargeRacks.even("through", 2),
            LargeRacks.uneven("per-bay", 2),
            LargeRacks.inches("through", 1),
            LargeRacks.inches("per-bay", 2))) {
      Plan plan = SheetTest.plan(rack, "shop.paper=" + paper.word());
      assertHeights(plan);
      frames(plan).forEach(Tidy::check);
      frames(plan).forEach(sheet -> Tidy.checkScales(sheet, plan.lengths().unit()));
    }
  }

  /** The oldest right-angled triangle: 3, 4 and 5. */
  @Test
  void theDiagonalsSayWhenItIsSquare() throws Exception {
    String rack =
        """
        slatwright: 1
        title: Square
        timber: { frame: { section: 40 x 40 }, slats: { section: 18 x 60 } }
        rack: { interior-width: 300, rail-length: 220, upright: 400, openings: [ even ] }
        """;
    assertTrue(words(frames(SheetTest.plan(rack))).contains("from corner to corner, are 500 mm."));
  }

  /** √(19² + 61.75²) = 64.607 in: 64 5/8 is the sixteenth nearest to it. */
  @Test
  void aTapeInInchesShowsSixteenths() throws Exception {
    String rack =
        """
        slatwright: 1
        title: Square
        units: in
        timber: { frame: { section: 1 1/2 x 1 1/2 }, slats: { section: 3/4 x 3 1/2 } }
        rack: { interior-width: 24, rail-length: 16, upright: 61 3/4, openings: [ even ] }
        """;
    assertTrue(
        words(frames(SheetTest.plan(rack))).contains("from corner to corner, are 64 5/8\"."));
  }

  private static List<Sheet> frames(Plan plan) {
    return plan.sheets().stream().filter(sheet -> sheet.name().endsWith("-frame")).toList();
  }

  private static String words(List<Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> Inked.of(sheet).words().stream())
        .map(Inked.Words::text)
        .collect(Collectors.joining(" "));
  }

  /** Of the first frame, from where its pieces stand. */
  private static void assertHeights(Plan plan) {
    List<Piece> pieces = plan.assembly().groups().get(0).pieces();
    Length top = height(pieces, Role.UPRIGHT, box -> Stream.of(box.high().z())).iterator().next();
    Set<Length> edges = height(pieces, Role.RAIL, box -> Stream.of(box.low().z(), box.high().z()));
    edges.addAll(Set.of(Length.ZERO, top));
    Set<Length> centres = height(pieces, Role.DOWEL, box -> Stream.of(middle(box)));
    centres.addAll(Set.of(Length.ZERO, top));
    Set<Length> seenEdges = new HashSet<>();
    Set<Length> seenCentres = new HashSet<>();
    List<Sheet> sheets = frames(plan);
    assertTrue(!sheets.isEmpty());
    for (Sheet sheet : sheets) {
      seenCentres.addAll(running(view(sheet, "front-edge")));
      seenEdges.addAll(running(view(sheet, "side")));
      assertChain(view(sheet, "side"), edges);
    }
    assertEquals(centres, seenCentres);
    assertEquals(edges, seenEdges);
    String holes =
        pieces.stream()
                .filter(p -> p.part().role() == Role.UPRIGHT)
                .findFirst()
                .orElseThrow()
                .part()
                .holes()
                .size()
            + " × ø ";
    assertTrue(words(sheets).contains(holes), holes);
  }

  private static Length middle(Box box) {
    return box.low().z().plus(box.size(Axis.Z).half());
  }

  private static Set<Length> height(
      List<Piece> pieces, Role role, Function<Box, Stream<Length>> heights) {
    return pieces.stream()
        .filter(piece -> piece.part().role() == role)
        .flatMap(piece -> heights.apply(piece.box()))
        .collect(Collectors.toCollection(HashSet::new));
  }

  private static View view(Sheet sheet, String id) {
    return sheet.views().stream().filter(view -> view.id().equals(id)).findFirst().orElseThrow();
  }

  /** What is counted from the floor; each as high on the paper as the scale says. */
  private static List<Length> running(View view) {
    List<Length> values = new ArrayList<>();
    double factor = view.scale().orElseThrow().factor();
    double floor = Double.NaN;
    for (Figure.Dimension dimension : dimensions(view)) {
      for (Figure figure : dimension.drawn()) {
        if (figure instanceof Figure.Polyline leader && leader.points().size() == 3) {
          double above = leader.points().get(0).y() - dimension.value().inMm() * factor;
          floor = values.isEmpty() ? above : floor;
          assertEquals(floor, above, EXACT, dimension.text());
          values.add(dimension.value());
        }
      }
    }
    return values;
  }

  /** The links between rails: each from an edge to the next. */
  private static void assertChain(View view, Set<Length> edges) {
    List<Length> rising = edges.stream().sorted().toList();
    List<Length> links = new ArrayList<>();
    for (int i = 1; i < rising.size(); i++) {
      links.add(rising.get(i).minus(rising.get(i - 1)));
    }
    List<Length> running = running(view).stream().sorted().toList();
    int first = rising.indexOf(running.get(0));
    List<Length> expected = links.subList(first, first + running.size() - 1);
    List<Length> all = dimensions(view).stream().map(Figure.Dimension::value).toList();
    assertTrue(
        Collections.indexOfSubList(all, expected) >= 0, () -> expected + " is not in " + all);
  }

  private static List<Figure.Dimension> dimensions(View view) {
    return Inked.of(view.figures()).dimensions();
  }
}
