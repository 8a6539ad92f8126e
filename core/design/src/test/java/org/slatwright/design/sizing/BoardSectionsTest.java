package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

class BoardSectionsTest {

  private static final String PALLETS =
      """
      slatwright: 1
      title: Potting shelf
      timber:
        frame: { section: 44 x 44 }
        slats:
          section: 18 x 92
          boards:
            - { length: 1200, width: 92, thickness: 18, count: 20 }
            - { length: 1200, width: 92, thickness: 17, count: 2 }
            - { length: 1200, width: 92, thickness: 16, count: 2 }
            - { length: 1200, width: 90, thickness: 20, count: 3 }
      rack: { interior-width: 580, rail-length: 400, upright: 900 }
      """;

  @Test
  void boardsThinnerOrNarrowerThanTheSectionAreNamedWithBothSizes() throws Exception {
    Rack rack = solve(PALLETS);

    assertEquals(
        List.of(
            "timber.slats.boards[2]: this board is 16 mm thick, less than the 18 mm of"
                + " timber.slats.section: the strength of all slats is reckoned with the thinnest"
                + " board",
            "timber.slats.boards[3]: this board is 90 mm wide, less than the 92 mm of"
                + " timber.slats.section: it gives no slat"),
        warnings(rack));
    assertEquals(Length.mm(16), rack.slats().thinnest());
    assertEquals(Length.mm(18), rack.slats().thickness(), "heights go by the section");
  }

  @Test
  void boardsAsLargeAsTheSectionArePlanedToIt() throws Exception {
    Rack rack = solve(PALLETS, "timber.slats.section=15 x 89");

    assertEquals(List.of(), warnings(rack));
    assertEquals(Length.mm(15), rack.slats().thinnest());
  }

  private static List<String> warnings(Rack rack) {
    return rack.notes().stream()
        .filter(note -> note.severity() == Severity.WARNING)
        .filter(note -> note.subject().startsWith("timber.slats.boards["))
        .map(BoardSectionsTest::told)
        .toList();
  }

  private static String told(Finding finding) {
    return finding.subject() + ": " + finding.message();
  }
}
