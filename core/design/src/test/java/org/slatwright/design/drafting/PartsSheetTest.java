package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.sizing.RandomRacks;

class PartsSheetTest {

  static List<Path> examples() throws Exception {
    return SheetTest.examples();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyPartOfAnExampleIsThereAndTrue(Path example) throws Exception {
    assertParts(SheetTest.plan(Files.readString(example)));
  }

  @Property(tries = 30)
  void everyPartOfAnyRackIsThereAndTrue(@ForAll("racks") String rack, @ForAll Paper paper)
      throws Exception {
    Plan plan = SheetTest.plan(rack, "shop.paper=" + paper.word());
    assertParts(plan);
    sheets(plan).forEach(Tidy::check);
  }

  @Provide
  Arbitrary<String> racks() {
    return Arbitraries.oneOf(RandomRacks.solvable(), RandomRacks.ofBoards());
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void fortyHolesReadOnEveryPaper(Paper paper) throws Exception {
    for (String rack : List.of(LargeRacks.uneven("through", 2), LargeRacks.inches("per-bay", 2))) {
      Plan plan = SheetTest.plan(rack, "shop.paper=" + paper.word());
      assertParts(plan);
      sheets(plan).forEach(Tidy::check);
    }
  }

  private static List<Sheet> sheets(Plan plan) {
    return plan.sheets().stream().filter(sheet -> sheet.name().endsWith("-parts")).toList();
  }

  private static void assertParts(Plan plan) {
    for (Part part : plan.assembly().parts()) {
      Optional<View> view =
          sheets(plan).stream()
              .flatMap(sheet -> sheet.views().stream())
              .filter(each -> each.id().equals("part-" + part.mark()))
              .findFirst();
      if (view.isPresent()) {
        assertDrawn(part, view.get(), plan);
      } else {
        assertEquals(Role.SLAT, part.role());
        assertTold(part, plan);
      }
    }
  }

  private static void assertDrawn(Part part, View view, Plan plan) {
    Shape shape = part.shape();
    Dimensions dimensions = Dimensions.of(view);
    String title = part.mark() + "  " + part.name() + ", " + part.quantity() + " off, ";
    List<String> words = words(view);
    assertTrue(words.stream().anyMatch(text -> text.startsWith(title)), () -> title + words);
    assertTrue(dimensions.values().contains(shape.length()), part.mark());
    assertTrue(dimensions.values().contains(shape.width()), part.mark());
    if (shape instanceof Shape.Bar) {
      assertTrue(dimensions.values().contains(shape.thickness()), part.mark());
    }
    Set<Length> inFace = places(part, Face.FACE_SIDE, Hole::along);
    if (!inFace.isEmpty()) {
      inFace.addAll(Set.of(Length.ZERO, shape.length()));
      assertTrue(dimensions.values().containsAll(inFace), () -> inFace + " of " + part.mark());
      assertChain(dimensions, places(part, Face.FACE_SIDE, Hole::across), shape.width());
    }
    Face end = plan.lengths().unit().metricOrInch(Face.START_END, Face.FAR_END);
    if (part.holes().stream().anyMatch(hole -> hole.face() == end)) {
      Set<Length> depths = places(part, Face.START_END, Hole::depth);
      part.holes().stream()
          .filter(hole -> hole.face() == Face.FAR_END)
          .forEach(hole -> depths.add(shape.length().minus(hole.depth())));
      assertChain(dimensions, depths, shape.length());
      assertChain(dimensions, places(part, end, Hole::along), shape.width());
      assertChain(
          dimensions,
          places(
              part,
              end,
              hole ->
                  end == Face.START_END ? hole.across() : shape.thickness().minus(hole.across())),
          shape.thickness());
    }
  }

  private static Set<Length> places(Part part, Face face, Function<Hole, Length> place) {
    return part.holes().stream()
        .filter(hole -> hole.face() == face)
        .map(place)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** One chain has a stop at each of the places and ends at the last. */
  private static void assertChain(Dimensions dimensions, Set<Length> places, Length total) {
    Set<Length> all = new HashSet<>(places);
    all.addAll(Set.of(Length.ZERO, total));
    List<Set<Length>> chains =
        Stream.of(dimensions.level(), dimensions.upright())
            .flatMap(each -> each.chains().stream())
            .map(Dimensions::places)
            .toList();
    assertTrue(chains.contains(all), () -> all + " is none of " + chains);
  }

  /** In a row of the table of slats. */
  private static void assertTold(Part part, Plan plan) {
    List<String> words =
        sheets(plan).stream()
            .flatMap(sheet -> sheet.views().stream())
            .filter(view -> view.id().startsWith("slats-"))
            .flatMap(view -> words(view).stream())
            .toList();
    int row = words.indexOf(part.mark());
    assertTrue(row >= 0, part.mark());
    Shape shape = part.shape();
    assertEquals(
        List.of(
            part.mark(),
            String.valueOf(part.quantity()),
            plan.lengths().number(shape.length()),
            plan.lengths().number(shape.thickness())
                + " × "
                + plan.lengths().number(shape.width())),
        words.subList(row, row + 4));
  }

  private static List<String> words(View view) {
    return Inked.of(view.figures()).words().stream().map(Inked.Words::text).toList();
  }
}
