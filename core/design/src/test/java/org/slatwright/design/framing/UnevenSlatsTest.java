package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.boards.RowNeed;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.sizing.Rack;

/** Slats as wide and thick as their boards, on two shelves. */
class UnevenSlatsTest {

  private static final String RACK =
      """
      slatwright: 1
      title: Onion rack
      timber: { frame: { section: 44 x 44, species: larch }, slats: { section: 18 x 90 } }
      rack: { interior-width: 580, rail-length: 320, upright: 900, openings: [ even ] }
      slats: { per-shelf: 3, gap-range: 0..60 }
      """;

  private final Assembly assembly = Framing.frame(rack());

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

  private static BoardChoice choice(Length length) {
    return new BoardChoice(
        List.of(
            row(new RowNeed(0, 0, length), 11, 11, slat(100, 18), slat(100, 17), slat(58, 18)),
            row(new RowNeed(1, 0, length), 10, 10, slat(140, 16), slat(140, 16))));
  }

  /** A slat's section. */
  private record Section(int width, int thickness) {}

  private static Section slat(int width, int thickness) {
    return new Section(width, thickness);
  }

  private static BoardChoice.Row row(RowNeed need, int front, int back, Section... sections) {
    List<BoardChoice.Slat> slats =
        Stream.of(sections)
            .map(
                section ->
                    new BoardChoice.Slat(
                        need.length(),
                        Length.mm(section.width()),
                        Length.mm(section.thickness()),
                        Optional.empty()))
            .toList();
    return new BoardChoice.Row(need, slats, Length.mm(20), Length.mm(front), Length.mm(back));
  }

  private static Rack rack() {
    try {
      Rack even = Framed.of(RACK).rack();
      return with(even, choice(even.slats().lengths().get(0)));
    } catch (RackFileException e) {
      throw new AssertionError(e);
    }
  }

  private static Rack with(Rack r, BoardChoice choice) {
    return new Rack(
        r.title(),
        r.units(),
        r.increment(),
        r.species(),
        r.reclaimed(),
        r.timber(),
        r.slatTimber(),
        r.load(),
        r.climate(),
        r.anchored(),
        r.braced(),
        r.upright(),
        r.rail(),
        r.bays(),
        r.interiorWidth(),
        r.foot(),
        r.openings(),
        r.topAbove(),
        r.slats(),
        r.joint(),
        r.fixing(),
        r.bitReach(),
        r.cutter(),
        r.jigSheet(),
        r.paper(),
        r.supplies(),
        Optional.of(choice),
        r.chains(),
        r.fits(),
        r.notes());
  }
}
