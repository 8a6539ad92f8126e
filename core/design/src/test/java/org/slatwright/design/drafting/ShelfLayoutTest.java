package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
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
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.sizing.RandomRacks;

class ShelfLayoutTest {

  private static final Pattern NAME = Pattern.compile("Shel(?:f|ves) ([0-9, to]+), scale .*");

  static List<Path> examples() throws Exception {
    return SheetTest.examples();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyShelfOfAnExampleIsThereAndTrue(Path example) throws Exception {
    assertLayout(SheetTest.plan(Files.readString(example)));
  }

  @Property(tries = 30)
  void everyShelfOfAnyRackIsThereAndTrue(@ForAll("racks") String rack, @ForAll Paper paper)
      throws Exception {
    Plan plan = SheetTest.plan(rack, "shop.paper=" + paper.word());
    assertLayout(plan);
    layouts(plan).forEach(Tidy::check);
  }

  @Provide
  Arbitrary<String> racks() {
    return Arbitraries.oneOf(RandomRacks.solvable(), RandomRacks.ofBoards());
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void sixBaysReadOnEveryPaper(Paper paper) throws Exception {
    for (String run : List.of("through", "per-bay")) {
      for (String rack : List.of(LargeRacks.even(run, 2), LargeRacks.inches(run, 1))) {
        Plan plan = SheetTest.plan(rack, "shop.paper=" + paper.word());
        assertLayout(plan);
        assertTrue(layouts(plan).size() <= 2);
        layouts(plan).forEach(Tidy::check);
        Set<String> marks =
            plan.assembly().pieces(Role.SLAT).stream()
                .map(slat -> slat.part().mark())
                .collect(Collectors.toSet());
        assertTrue(words(layouts(plan)).containsAll(marks), () -> marks + " are not all drawn");
      }
    }
  }

  /** Boards of many widths in three bays: rows that differ are told in a table. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void manyDifferentRowsAreATable(Paper paper) throws Exception {
    Plan plan = SheetTest.plan(BARN_BOARDS, "shop.paper=" + paper.word());
    layouts(plan).forEach(Tidy::check);
    String said = String.join(" ", words(layouts(plan)));
    Length start = plan.assembly().pieces(Role.RAIL).get(0).box().low().y();
    for (Piece slat : plan.assembly().pieces(Role.SLAT)) {
      String place =
          slat.part().mark() + " at " + plan.lengths().number(slat.box().low().y().minus(start));
      assertTrue(said.contains(place), () -> place + " is not in " + said);
    }
  }

  @Test
  void shelvesThatAreAlikeAreDrawnOnce() throws Exception {
    List<String> words = words(layouts(SheetTest.plan(LargeRacks.even("through", 1))));

    assertEquals(1, words.stream().filter(text -> text.startsWith("Shelves 1 to 20,")).count());
  }

  private static List<Sheet> layouts(Plan plan) {
    return plan.sheets().stream().filter(sheet -> sheet.name().endsWith("-shelf-layout")).toList();
  }

  private static List<String> words(List<Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> Inked.of(sheet).words().stream())
        .map(Inked.Words::text)
        .toList();
  }

  private static void assertLayout(Plan plan) {
    List<View> views = layouts(plan).stream().flatMap(sheet -> sheet.views().stream()).toList();
    List<View> shelves = views.stream().filter(view -> view.id().startsWith("shel")).toList();
    assertTrue(!shelves.isEmpty());
    shelves.forEach(view -> assertShelf(view, plan));
    assertFastened(views, plan);
    boolean told = views.stream().anyMatch(view -> view.id().startsWith("rows-"));
    boolean byBay = words(layouts(plan)).stream().anyMatch(text -> text.contains(" bay "));
    if (!told && !byBay) {
      assertEquals(
          IntStream.rangeClosed(1, shelves(plan).size()).boxed().collect(Collectors.toSet()),
          named(words(layouts(plan))));
    }
  }

  private static List<Group> shelves(Plan plan) {
    return plan.assembly().groups().stream()
        .filter(group -> group.kind() == Group.Kind.SHELF)
        .toList();
  }

  private static Set<Integer> named(List<String> words) {
    Set<Integer> named = new TreeSet<>();
    for (String text : words) {
      Matcher name = NAME.matcher(text);
      if (name.matches()) {
        for (String part : name.group(1).split(", ")) {
          String[] ends = part.split(" to ");
          IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]))
              .forEach(named::add);
        }
      }
    }
    return named;
  }

  /** Every edge of a slat of its rows is where the chain beside it has a stop. */
  private static void assertShelf(View view, Plan plan) {
    List<Piece> slats = drawn(view, plan, Role.SLAT);
    Box rail = drawn(view, plan, Role.RAIL).get(0).box();
    List<Dimensions> upright = Dimensions.of(view).upright().chains();
    assertEquals(rail.size(Axis.Y), upright.get(upright.size() - 1).total(), view.id());
    Dimensions edges = upright.get(0);
    assertEquals(rail.size(Axis.Y), edges.total(), view.id());
    if (edges.isRepeated()) {
      assertPitch(edges, slats);
    } else {
      for (Piece slat : slats) {
        Length front = slat.box().low().y().minus(rail.low().y());
        Length back = slat.box().high().y().minus(rail.low().y());
        assertTrue(edges.places().containsAll(List.of(front, back)), slat.id());
      }
    }
    Box all = everything(view, plan).map(Piece::box).reduce(Box::around).orElseThrow();
    List<Dimensions> level = Dimensions.of(view).level().chains();
    assertTrue(level.stream().anyMatch(chain -> chain.total().equals(all.size(Axis.X))), view.id());
  }

  private static Stream<Piece> everything(View view, Plan plan) {
    return Stream.of(Role.SLAT, Role.RAIL, Role.UPRIGHT)
        .flatMap(role -> drawn(view, plan, role).stream());
  }

  /** All from one slat's front edge to the next are alike, and as many as it says. */
  private static void assertPitch(Dimensions edges, List<Piece> slats) {
    Figure.Dimension repeated =
        edges.all().stream().filter(each -> each.text().contains("×")).findFirst().orElseThrow();
    TreeSet<Length> fronts = new TreeSet<>();
    slats.forEach(slat -> fronts.add(slat.box().low().y()));
    assertEquals(fronts.last().minus(fronts.first()), repeated.value());
    assertTrue(repeated.text().startsWith((fronts.size() - 1) + " × "), repeated.text());
  }

  private static List<Piece> drawn(View view, Plan plan, Role role) {
    Set<String> ids = new HashSet<>();
    for (Figure figure : view.figures()) {
      if (figure instanceof Figure.Cluster cluster) {
        ids.add(cluster.id());
      }
    }
    return plan.assembly().pieces(role).stream()
        .filter(piece -> ids.contains(view.id() + "-" + piece.id()))
        .toList();
  }

  /** Every brad or screw of the rack is where the views of a frame and the table of widths say. */
  private static void assertFastened(List<View> views, Plan plan) {
    List<Group> frames =
        plan.assembly().groups().stream()
            .filter(group -> group.kind() == Group.Kind.FRAME)
            .toList();
    for (int i = 0; i < frames.size(); i++) {
      int shown = i == 0 ? 1 : i == frames.size() - 1 ? frames.size() : 2;
      View view = view(views, "bearing-" + shown);
      List<Piece> pieces = frames.get(i).pieces();
      Box upright = pieces.get(0).box();
      Set<Length> across = Dimensions.of(view).level().chains().get(0).places();
      Set<Length> along = Dimensions.of(view).upright().chains().get(0).places();
      for (Fastener each : plan.assembly().fasteners()) {
        if (pieces.contains(each.into())) {
          Box slat = each.through().box();
          Length start = i == 0 ? Length.min(slat.low().x(), upright.low().x()) : upright.low().x();
          assertTrue(across.contains(each.head().x().minus(start)), () -> view.id() + " " + each);
          Length fromFront = each.head().y().minus(slat.low().y());
          assertTrue(
              along.contains(fromFront) || isInTable(views, slat.size(Axis.Y), fromFront, plan),
              () -> view.id() + " " + each);
        }
      }
    }
  }

  private static boolean isInTable(List<View> views, Length width, Length place, Plan plan) {
    List<String> cells =
        views.stream()
            .filter(view -> view.id().equals("fasteners"))
            .flatMap(view -> Inked.of(view.figures()).words().stream())
            .map(Inked.Words::text)
            .toList();
    int row = cells.indexOf(plan.lengths().number(width));
    return row >= 0
        && List.of(cells.get(row + 1).split(", ")).contains(plan.lengths().number(place));
  }

  private static View view(List<View> views, String id) {
    return views.stream().filter(view -> view.id().equals(id)).findFirst().orElseThrow();
  }

  private static final String BARN_BOARDS =
      """
      slatwright: 1
      title: Barn-board rack
      timber:
        frame: { section: 44 x 44 }
        slats:
          boards:
            - { length: 2400, width: 92, thickness: 16, count: 18 }
            - { length: 2510, width: 118, thickness: 16, count: 20 }
            - { length: 2300, width: 71, thickness: 16, count: 19 }
            - { length: 2300, width: 80, thickness: 17, count: 19 }
      rack:
        bays: 3
        interior-width: 600
        rail-length: 400
        openings: [ { clear: 100, count: 11 } ]
      slats: { gap-range: 5..25, run: per-bay }
      """;
}
