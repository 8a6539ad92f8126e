package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.measure.Length;

class LabelsTest {

  private static final double HALF_LETTER = 1.25;
  private static final double PITCH = 4;

  @Example
  void aLabelWithRoomStandsAtItsHeight() {
    assertEquals(List.of(10.0, 50.0), heights(List.of(10.0, 50.0), 0, 100));
  }

  @Example
  void closeOnesMakeRoomForEachOtherToBothSides() {
    assertEquals(List.of(18.0, 22.0), heights(List.of(20.0, 20.0), 0, 100));
  }

  @Example
  void thoseAtAnEndMakeRoomInwards() {
    assertEquals(List.of(92.0, 96.0, 100.0), heights(List.of(99.0, 100.0, 100.0), 0, 100));
    assertEquals(List.of(0.0, 4.0), heights(List.of(0.0, 1.0), 0, 100));
  }

  @Property
  void noneStandsOnAnotherOrOutside(@ForAll List<@DoubleRange(max = 100) Double> at) {
    List<Double> few = at.subList(0, Math.min(at.size(), 25)).stream().sorted().toList();
    List<Double> heights = heights(few, 0, 100);
    for (int i = 0; i < heights.size(); i++) {
      assertTrue(heights.get(i) >= -1e-9 && heights.get(i) <= 100 + 1e-9);
      if (i > 0) {
        assertTrue(heights.get(i) - heights.get(i - 1) >= PITCH - 1e-9, heights::toString);
      }
    }
  }

  private static List<Double> heights(List<Double> at, double low, double high) {
    List<Mark> marks =
        IntStream.range(0, at.size())
            .mapToObj(i -> new Mark(Length.roundedMm(at.get(i)), "mark " + i))
            .toList();
    return new Labels(marks)
        .figures(Labels.Side.RIGHT, 0, 0, low, high).stream()
            .filter(Figure.Text.class::isInstance)
            .map(figure -> ((Figure.Text) figure).at().y() + HALF_LETTER)
            .toList();
  }
}
