package org.slatwright.design.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Example;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;

class StrokeLettersTest {

  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-";
  private static final Length HEIGHT = Length.mm(6);

  @Example
  void everyCharacterIsItsOwnAndWithinItsBox() {
    Set<List<Pattern.Stroke>> shapes = new HashSet<>();
    for (char letter : ALL.toCharArray()) {
      List<Pattern.Stroke> strokes =
          StrokeLetters.of(String.valueOf(letter), Point2.ORIGIN, HEIGHT);
      Extent extent =
          strokes.stream()
              .flatMap(stroke -> stroke.points().stream())
              .map(Extent::at)
              .reduce(Extent::around)
              .orElseThrow();
      assertTrue(extent.low().x().compareTo(Length.ZERO) >= 0, "" + letter);
      assertTrue(extent.high().x().compareTo(Length.mm(4)) <= 0, "" + letter);
      if (letter != '-') {
        assertEquals(Length.ZERO, extent.low().y(), "" + letter);
        assertEquals(HEIGHT, extent.high().y(), "" + letter);
      }
      assertTrue(shapes.add(strokes), letter + " looks like another");
    }
  }

  @Example
  void lettersFollowOneAnother() {
    assertEquals(Length.mm(4 + 6 + 6), StrokeLetters.width("J12", HEIGHT));
    List<Pattern.Stroke> strokes = StrokeLetters.of("LL", Point2.ORIGIN, HEIGHT);
    assertEquals(
        strokes.get(0).points().get(0).moved(Length.mm(6), Length.ZERO),
        strokes.get(1).points().get(0));
  }

  @Example
  void whatIsNotInTheAlphabetIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> StrokeLetters.of("a", Point2.ORIGIN, HEIGHT));
  }
}
