package org.slatwright.design.templates.printing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.templates.Drawn;

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

  @ParameterizedTest
  @EnumSource
  void theBookOfAnExampleWastesNoPage(Paper paper) throws IOException {
    for (Drawn example : Drawn.examples()) {
      Rack rack = example.rack();
      Printing printing =
          new Printing(rack.title(), rack.units(), paper, rack.shop().printMargin());
      assertFew(printing, example.drafts());
      assertHalfIsTemplate(printing, example.drafts());
    }
  }

  private static void assertFew(Paper paper, List<Draft> drafts) {
    assertFew(new Printing("Stand", Unit.MM, paper, MARGIN), drafts);
  }

  private static void assertFew(Printing printing, List<Draft> drafts) {
    long least = least(area(printing), pieces(printing, drafts));
    int pages = printing.print(drafts).pages().size();
    assertTrue(
        pages <= Math.max(least + 1, (11 * least + 6) / 9),
        () -> pages + " pages, where at least " + least + " are needed, " + printing);
  }

  /**
   * Two pages at most for each that the templates alone would fill, whatever goes into overlaps,
   * labels, cards and the room between: a book that is mostly waste is not worth its paper (our own
   * measure, no source; the examples take 1.2 to 1.9).
   */
  private static void assertHalfIsTemplate(Printing printing, List<Draft> drafts) {
    PaperBox page = area(printing);
    double bare =
        drafts.stream().mapToDouble(draft -> draft.width().inMm() * draft.height().inMm()).sum();
    double least = Math.ceil(bare / page.width() / page.height());
    int pages = printing.print(drafts).pages().size();
    assertTrue(pages <= 2 * least, () -> pages + " pages to " + least + ", " + printing);
  }

  private static PaperBox area(Printing printing) {
    return PageLayout.of(printing.paper(), printing.margin().inMm()).area();
  }

  /**
   * By area, with the spacing right of each piece and above it; by the pieces that are too long to
   * lie across a page or above one another, of which only so many stand abreast; and by those that
   * are more than half a page both ways, of which no page has two.
   */
  private static long least(PaperBox area, List<Piece> pieces) {
    double spacing = Nesting.SPACING_MM;
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
    double half = (Math.max(area.width(), area.height()) - spacing) / 2;
    long alone = pieces.stream().filter(piece -> shorter(piece) > half).count();
    return Math.max(
        Math.max((long) Math.ceil(all / page), alone), leastRows(abreast, room, new HashMap<>()));
  }

  private static double shorter(Piece piece) {
    return Math.min(piece.width(), piece.height());
  }

  private static List<Piece> pieces(Printing printing, List<Draft> drafts) {
    PaperBox area = area(printing);
    LengthFormat lengths = new LengthFormat(printing.units());
    List<Piece> pieces = new ArrayList<>();
    for (Draft draft : drafts) {
      TiledDraft tiled = new TiledDraft(draft, area.width() - TileLabel.MOST_MM, area.height());
      pieces.addAll(tiled.pieces());
      UseCard.of(tiled, lengths).ifPresent(pieces::add);
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
