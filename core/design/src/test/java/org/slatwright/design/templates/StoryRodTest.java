package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/** The rod, stood on the floor beside the rack. */
class StoryRodTest {

  private static final double FACE = 12;

  @Provide
  Arbitrary<Drawn> racks() {
    return Drawn.any();
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void everyHeightOfAnExampleIsOnIt(Drawn rack) {
    assertEveryHeight(rack);
  }

  @Property(tries = 60)
  void everyHeightIsOnIt(@ForAll("racks") Drawn rack) {
    assertEveryHeight(rack);
  }

  @Test
  void eachHeightSaysWhatItIs() {
    List<String> texts = new Ruled(Drawn.example("seed-trays").draft("story-rod")).texts();
    assertTrue(
        texts.containsAll(
            List.of(
                "floor 0",
                "R underside 100",
                "dowel a 122",
                "R top 144",
                "shelf 1: S top 162",
                "top of U 1500")),
        texts::toString);
  }

  private static void assertEveryHeight(Drawn rack) {
    Ruled rod = new Ruled(rack.draft("story-rod"));
    double floor = rod.levels(0, FACE).get(0);
    TreeSet<Long> drawn = new TreeSet<>();
    rod.levels(0, FACE).forEach(y -> drawn.add(nanometres(y - floor)));
    rod.boxes().stream()
        .filter(box -> Ruled.near(box.getWidth(), FACE))
        .forEach(
            box -> {
              drawn.add(nanometres(box.getMinY() - floor));
              drawn.add(nanometres(box.getMaxY() - floor));
            });
    TreeSet<Long> standing = new TreeSet<>();
    heights(rack.assembly()).map(Length::nanometres).forEach(standing::add);
    assertEquals(standing, drawn);
    for (Length height : heights(rack.assembly()).toList()) {
      String number = " " + rack.lengths().number(height);
      assertTrue(rod.texts().stream().anyMatch(text -> text.endsWith(number)), number);
    }
  }

  /** Double figures in mm are whole nanometres but for the last digits. */
  private static long nanometres(double mm) {
    return Length.roundedMm(mm).nanometres();
  }

  private static Stream<Length> heights(Assembly assembly) {
    Stream<Length> edges =
        Stream.of(Role.UPRIGHT, Role.RAIL, Role.SLAT)
            .flatMap(role -> assembly.pieces(role).stream())
            .map(Piece::box)
            .flatMap(box -> Stream.of(box.low().z(), box.high().z()));
    Stream<Length> dowels =
        assembly.pieces(Role.DOWEL).stream()
            .map(Piece::box)
            .map(box -> box.low().z().plus(box.high().z().minus(box.low().z()).half()));
    return Stream.concat(edges, dowels);
  }
}
