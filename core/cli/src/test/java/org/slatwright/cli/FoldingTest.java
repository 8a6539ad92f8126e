package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class FoldingTest {

  @Test
  void aNumberStaysWithItsUnitAndItsFraction() {
    String filler = "x".repeat(70);
    assertEquals(
        List.of(filler + " openings", "  1140 mm and 3 1/2 in"),
        Folding.lines("", "  ", filler + " openings 1140 mm and 3 1/2 in"));
    assertEquals(
        List.of(filler + " leaves", "  12 mm too short"),
        Folding.lines("", "  ", filler + " leaves 12 mm too short"));
    assertEquals(
        List.of("load:", "38 lb", "pulls", "20 lbf", "on", "30 11/16\""),
        Folding.words("load: 38 lb pulls 20 lbf on 30 11/16\""));
  }

  @Test
  void aWordThatIsNoUnitMayBeginALine() {
    String filler = "x".repeat(70);
    assertEquals(
        List.of(filler + " adds up 4", "  shelves"),
        Folding.lines("", "  ", filler + " adds up 4 shelves"));
  }
}
