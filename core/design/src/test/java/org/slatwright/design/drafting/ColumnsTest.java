package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnsTest {

  /** Room for two columns of 86 mm. */
  private static final double WIDTH = 178;

  private static final String SHORT = "short";
  private static final String LONG = "a paragraph of several lines, as they are ".repeat(8);

  /** One long paragraph beside as many short ones as are about as high. */
  @Test
  void columnsAreAsLevelAsTheirParagraphsAllow() {
    double one = columns(List.of(LONG)).height();
    assertEquals(one, columns(List.of(LONG, SHORT, SHORT)).height(), 1e-9);
    assertEquals(one, columns(List.of(SHORT, SHORT, LONG)).height(), 1e-9);
    assertEquals(one, columns(List.of(LONG, LONG)).height(), 1e-9);
  }

  @Test
  void oneParagraphMoreNeverTakesLessRoom() {
    double before = 0;
    for (int count = 1; count <= 12; count++) {
      double height = columns(Collections.nCopies(count, LONG)).height();
      assertTrue(height >= before - 1e-9, count + " paragraphs");
      before = height;
    }
  }

  private static Columns columns(List<String> paragraphs) {
    return new Columns("Notes", paragraphs, WIDTH);
  }
}
