package org.slatwright.design.checks;

import java.util.Locale;
import java.util.stream.Collectors;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/** A solved rack written back as a rack file in either unit, with nothing left to a default. */
final class RackText {

  private final Rack rack;
  private final Spelling spelling;

  private RackText(Rack rack, Unit unit) {
    this.rack = rack;
    this.spelling = new Spelling(unit);
  }

  static String of(Rack rack, Unit unit) {
    return new RackText(rack, unit).text();
  }

  private String text() {
    Rack.SlatRow slats = rack.slats();
    Rack.DowelJoint joint = rack.joint();
    Rack.Fixing fixing = rack.fixing();
    boolean through = slats.lengths().size() == 1;
    return String.format(
        Locale.ROOT,
        """
        slatwright: 1
        title: %s
        units: %s
        increment: %s
        timber:
          frame: { section: %s, species: %s }
          rails: { section: %s }
          slats: { section: %s }
          dowel: { diameter: %s }
        rack:
          bays: %d
          interior-width: %s
          rail-length: %s
          upright: %s
          foot: %s
          openings: [ %s ]
          top: %s
        slats: { per-shelf: %d%s, gap-range: 0..100mm, run: %s, overhang: %s }
        joint:
          dowels: %d
          embedment: %s
          fixing: { kind: %s, length: %s, diameter: %s, per-end: %d }
        shop: { kerf: 3.2mm, end-trim: 10mm, jig-sheet: 6mm%s, paper: A4 }
        load: { per-shelf: %d g, climate: %s }
        """,
        rack.title(),
        spelling.unit().symbol(),
        length(rack.increment()),
        section(rack.upright().width(), rack.upright().depth()),
        rack.species(),
        section(rack.rail().width(), rack.rail().height()),
        section(slats.thickness(), slats.width()),
        length(joint.diameter()),
        rack.bays(),
        length(rack.interiorWidth()),
        length(rack.rail().length()),
        length(rack.upright().length()),
        length(rack.foot()),
        rack.openings().stream().map(this::length).collect(Collectors.joining(", ")),
        length(rack.topAbove()),
        slats.count(),
        slats.count() > 1 ? ", gap: " + length(slats.gap()) : "",
        through ? "through" : "per-bay",
        length(slats.overhang()),
        joint.heights().size(),
        length(joint.embedment()),
        fixing.kind().name().toLowerCase(Locale.ROOT),
        length(fixing.length()),
        length(fixing.diameter()),
        fixing.perEnd(),
        rack.shop().bitReach().map(reach -> ", bit-reach: " + length(reach)).orElse(""),
        rack.load().grams(),
        rack.climate().word());
  }

  private String length(Length length) {
    return spelling.length(length);
  }

  private String section(Length first, Length second) {
    return spelling.pair(first, " x ", second);
  }
}
