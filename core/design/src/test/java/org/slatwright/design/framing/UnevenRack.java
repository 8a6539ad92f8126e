package org.slatwright.design.framing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.boards.RowNeed;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.sizing.Rack;

/** A rack of two shelves, three uneven slats on the lower one and two alike on the upper. */
public final class UnevenRack {

  private static final String RACK =
      """
      slatwright: 1
      title: Onion rack
      timber: { frame: { section: 44 x 44, species: larch }, slats: { section: 18 x 90 } }
      rack: { interior-width: 580, rail-length: 320, upright: 900, openings: [ even ] }
      slats: { per-shelf: 3, gap-range: 0..60 }
      """;

  private UnevenRack() {}

  private static BoardChoice choice(Length length, int front) {
    return new BoardChoice(
        List.of(
            row(
                new RowNeed(0, 0, length),
                front,
                22 - front,
                slat(100, 18),
                slat(100, 17),
                slat(58, 18)),
            row(new RowNeed(1, 0, length), 10, 10, slat(140, 16), slat(140, 16))),
        true);
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
    return new BoardChoice.Row(
        need, slats, Length.mm(20), Length.mm(front), Length.mm(back), Optional.empty());
  }

  /** That rack. */
  public static Rack make() {
    return withFrontMargin(11);
  }

  /** That rack, with its lower slats so many millimetres from the front, of 22 in all. */
  public static Rack withFrontMargin(int front) {
    try {
      Rack even = Framed.of(RACK).rack();
      return with(even, choice(even.slats().lengths().get(0), front));
    } catch (RackFileException e) {
      throw new AssertionError(e);
    }
  }

  private static Rack with(Rack r, BoardChoice choice) {
    return new Rack(
        r.title(),
        r.units(),
        r.increment(),
        r.feetAbove(),
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
        r.shop(),
        r.supplies(),
        Optional.of(choice),
        r.chains(),
        r.fits(),
        r.notes());
  }
}
