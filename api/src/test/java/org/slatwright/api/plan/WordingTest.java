package org.slatwright.api.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;

class WordingTest {

  private static final Wording BLOCKS =
      Wording.of("Blocks of {} and {}.", Length.inches(3, 4), Length.inches(1, 1));

  @Test
  void aSentenceIsSaidInAnyUnit() {
    assertEquals("Blocks of 3/4\" and 1\".", BLOCKS.in(new LengthFormat(Unit.INCH)));
    assertEquals("Blocks of 19.05 mm and 25.4 mm.", BLOCKS.in(new LengthFormat(Unit.MM)));
  }

  @Test
  void everyGapHasItsLength() {
    assertThrows(IllegalArgumentException.class, () -> Wording.of("as long as {}"));
    assertThrows(IllegalArgumentException.class, () -> new Wording("none", List.of(Length.mm(1))));
  }
}
