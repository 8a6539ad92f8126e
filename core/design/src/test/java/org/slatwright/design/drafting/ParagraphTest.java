package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Lettering;

class ParagraphTest {

  @Property(tries = 200)
  void noLineIsWiderThanItsRoom(
      @ForAll @StringLength(max = 200) String text,
      @ForAll @DoubleRange(min = 20, max = 120) double width) {
    for (String line : Paragraph.wrap(text, 2.5, width, 3)) {
      assertTrue(Lettering.width(line, 2.5) <= width, line);
    }
    assertTrue(Paragraph.wrap(text, 2.5, width, 3).size() <= 3);
  }

  @Test
  void aNumberStaysWithItsFractionAndItsUnit() {
    List<String> lines = Paragraph.wrap("rail 1 1/2 and 37.6 mm", 2.5, 20);

    assertEquals("rail 1 1/2 and 37.6 mm", String.join(" ", lines));
    assertTrue(lines.stream().noneMatch(line -> line.endsWith(" 1") || line.equals("mm")));
  }

  @Test
  void noUnitBeginsALine() {
    double room = Lettering.width("a load of 1000", 2.5) + 0.1;
    for (String unit : List.of("g", "kg", "oz", "lb", "N", "kN", "MPa", "psi", "%")) {
      List<String> lines = Paragraph.wrap("a load of 1000 " + unit, 2.5, room);

      assertEquals(List.of("a load of", "1000 " + unit), lines);
    }
  }

  @Test
  void whatIsCutShortEndsWithAnEllipsis() {
    assertTrue(Paragraph.cut("a title that is far too long", 5, 30).endsWith("…"));
    assertEquals("short", Paragraph.cut("short", 5, 30));
  }

  @Test
  void anEmojiIsNeverCutInTwo() {
    String line = Paragraph.cut("🪴🪴🪴🪴🪴🪴🪴🪴", 5, 30);

    assertEquals(line.length() - 1, 2L * line.codePoints().filter(c -> c == 0x1FAB4).count());
  }
}
