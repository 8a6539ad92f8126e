package org.slatwright.design.templates.printing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.drafting.PaperBox;

/**
 * Pages against the fewest that there could be: one more, or 11/9 of them and 6/9, which is how
 * good first fit decreasing is at worst on strips (Dósa 2007, from memory).
 */
class FewPagesTest {

  private static final Length MARGIN = Length.inches(1, 4);

  @ParameterizedTest
  @EnumSource
  void stripsWasteNoPage(Paper paper) {
    assertFew(
        paper,
        List.of(
            Drafts.strip("U-drilling", 44, 1500),
            Drafts.strip("V-drilling", 44, 1500),
            Drafts.strip("R-drilling", 44, 320),
            Drafts.strip("rod", 30, 1500)));
  }

  @ParameterizedTest
  @EnumSource
  void smallPlatesWasteNoPage(Paper paper) {
    List<Draft> drafts = new ArrayList<>();
    IntStream.range(0, 12).forEach(i -> drafts.add(Drafts.plate("J" + i, 60 + 5 * i, 50)));
    IntStream.range(0, 12).forEach(i -> drafts.add(Drafts.plate("S" + i, 25, 40)));
    assertFew(paper, drafts);
  }

  private static void assertFew(Paper paper, List<Draft> drafts) {
    Templates templates = new Printing("Stand", Unit.MM, paper, MARGIN).print(drafts);
    long least = least(PageLayout.of(paper, MARGIN.inMm()).area(), drafts);
    int pages = templates.pages().size();
    assertTrue(
        pages <= Math.max(least + 1, (11 * least + 6) / 9),
        () -> pages + " pages, where at least " + least + " are needed");
  }

  /**
   * By area, with the spacing right of each piece and above it; and by the pieces that are too long
   * to lie across a page or above one another, of which only so many stand abreast.
   */
  private static long least(PaperBox area, List<Draft> drafts) {
    double spacing = Nesting.SPACING_MM;
    List<Piece> pieces = pieces(area, drafts);
    double all =
        pieces.stream()
            .mapToDouble(piece -> (piece.width() + spacing) * (piece.height() + spacing))
            .sum();
    double page = (area.width() + spacing) * (area.height() + spacing);
    List<Integer> abreast =
        pieces.stream()
            .filter(piece -> piece.height() > Math.max(area.height() / 2, area.width()))
            .map(piece -> (int) Math.floor(piece.width() + spacing))
            .sorted()
            .toList();
    int room = (int) Math.ceil(area.width() + spacing);
    return Math.max((long) Math.ceil(all / page), leastRows(abreast, room, new HashMap<>()));
  }

  private static List<Piece> pieces(PaperBox area, List<Draft> drafts) {
    List<Piece> pieces = new ArrayList<>();
    for (Draft draft : drafts) {
      TiledDraft tiled = new TiledDraft(draft, area.width() - TileLabel.MOST_MM, area.height());
      pieces.addAll(tiled.pieces());
      UseCard.of(tiled, new LengthFormat(Unit.MM)).ifPresent(pieces::add);
    }
    return pieces;
  }

  /** In how few rows pieces of these widths stand: every way to fill one row is tried. */
  private static int leastRows(List<Integer> widths, int room, Map<List<Integer>, Integer> known) {
    if (widths.isEmpty()) {
      return 0;
    }
    Integer before = known.get(widths);
    if (before != null) {
      return before;
    }
    int last = widths.size() - 1;
    Set<List<Integer>> left = new HashSet<>();
    fill(widths.subList(0, last), room - widths.get(last), last - 1, left);
    int least =
        1 + left.stream().mapToInt(rest -> leastRows(rest, room, known)).min().orElseThrow();
    known.put(widths, least);
    return least;
  }

  /** What can be left when a row that has {@code room} over is filled as far as it goes. */
  private static void fill(List<Integer> widths, int room, int from, Set<List<Integer>> left) {
    boolean full = true;
    for (int i = from; i >= 0; i--) {
      if (widths.get(i) <= room && (i == from || !widths.get(i).equals(widths.get(i + 1)))) {
        List<Integer> rest = new ArrayList<>(widths);
        rest.remove(i);
        fill(rest, room - widths.get(i), i - 1, left);
        full = false;
      }
    }
    if (full) {
      left.add(widths);
    }
  }
}
