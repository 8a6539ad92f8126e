package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/** Slats as wide and thick as their boards. */
class UnevenSlatsTest {

  private final Assembly assembly = Framing.frame(UnevenRack.make());

  @Test
  void slatsOfOneSectionAreOnePartTheWidestFirst() {
    assertEquals(
        List.of("S1 140 x 16: 2", "S2 100 x 18: 1", "S3 100 x 17: 1", "S4 58 x 18: 1"),
        assembly.parts().stream()
            .filter(part -> part.role() == Role.SLAT)
            .map(UnevenSlatsTest::told)
            .toList());
  }

  @Test
  void aShelfHoldsItsSlatsInTheOrderOfItsRow() {
    assertEquals(List.of("S2", "S3", "S4"), marks(0));
    assertEquals(List.of("S1", "S1"), marks(1));
  }

  @Test
  void eachRowHasItsOwnGapAndMargins() {
    // 44 + 11 = 55, 55 + 100 + 20 = 175, 175 + 100 + 20 = 295, and 44 + 10 = 54, 54 + 140 + 20
    assertEquals(List.of("55", "175", "295"), fronts(0));
    assertEquals(List.of("54", "214"), fronts(1));
  }

  @Test
  void unevenSlatsLieLevelBelowAndStepAbove() {
    List<Box> slats = shelf(0).pieces().stream().map(Piece::box).toList();

    assertEquals(1, slats.stream().map(slat -> slat.low().z()).distinct().count());
    assertEquals(2, slats.stream().map(slat -> slat.high().z()).distinct().count());
    for (int i = 1; i < slats.size(); i++) {
      assertFalse(slats.get(i - 1).overlaps(slats.get(i)));
    }
  }

  @Test
  void fixingsGoByTheWidthOfTheirOwnSlat() {
    for (Fastener fastener : assembly.fasteners()) {
      Box slat = fastener.through().box();
      Length quarter = fastener.through().part().shape().width().dividedBy(4);
      Length in = fastener.head().y().minus(slat.low().y());

      assertTrue(in.equals(quarter) || in.equals(quarter.times(3)), fastener::toString);
      assertEquals(slat.high().z(), fastener.head().z(), "flush with its own top");
    }
  }

  private Group shelf(int shelf) {
    return assembly.groups().stream()
        .filter(group -> group.kind() == Group.Kind.SHELF)
        .toList()
        .get(shelf);
  }

  private List<String> marks(int shelf) {
    return shelf(shelf).pieces().stream().map(piece -> piece.part().mark()).toList();
  }

  private List<String> fronts(int shelf) {
    return shelf(shelf).pieces().stream().map(piece -> mm(piece.box().low().y())).toList();
  }

  private static String told(Part part) {
    return "%s %s x %s: %s"
        .formatted(
            part.mark(), mm(part.shape().width()), mm(part.shape().thickness()), part.quantity());
  }

  private static String mm(Length length) {
    return String.valueOf((long) length.inMm());
  }
}
