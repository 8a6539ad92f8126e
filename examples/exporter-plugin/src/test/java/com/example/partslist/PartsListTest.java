package com.example.partslist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

class PartsListTest {

  @Test
  void aPartIsOneRow() {
    assertTrue(
        lines(WareRack.inMillimetres(), false)
            .contains(
                "| U | upright | 4 | 600 mm of 44 × 44 mm"
                    + " | norway spruce, frame stock 44 × 44 mm | square both ends |"));
  }

  @Test
  void inchesAreFractions() {
    assertTrue(
        lines(WareRack.inInches(), false).stream()
            .anyMatch(line -> line.startsWith("| U | upright | 4 | 24\" of 1 3/4\" × 1 3/4\"")));
  }

  @Test
  void everyPieceHasItsBox() {
    assertTrue(
        lines(WareRack.inMillimetres(), true).stream()
            .anyMatch(line -> line.startsWith("| U | upright | 4 ☐☐☐☐ |")));
  }

  @Test
  void aTitleIsNeverMarkup() throws IOException {
    String first = lines(SamplePlans.titled("two\nlines | <b>*bold*</b>"), false).get(0);
    assertEquals("# two lines \\| \\<b\\>\\*bold\\*\\</b\\>", first);
  }

  @Test
  void aFindingSaysWhatToDo() {
    assertTrue(
        lines(WareRack.inMillimetres(), false)
            .contains(
                "- **warning**, rack: narrow for its height: it may tip when pulled at the top"
                    + " *fasten it to the wall*"));
  }

  private static List<String> lines(Plan plan, boolean tickBoxes) {
    return new PartsList(plan, tickBoxes).text().lines().toList();
  }
}
