package org.slatwright.design.rackfile;

import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/** The keys of {@code slats}. */
record SlatKeys(Kinds kinds, Unit units) {

  private static final int MOST_PER_SHELF = 200;

  RackFile.Slats read(Fields top) {
    Fields slats = top.group("slats", "{ per-shelf: 3, run: through }");
    Kind<RackFile.Run> run = Kinds.oneOf(RackFile.Run.values(), RackFile.Run::word);
    RackFile.Slats read =
        new RackFile.Slats(
            slats.optional("per-shelf", Kinds.count(1, MOST_PER_SHELF)),
            slats.optional("gap", kinds.lengthOrNone()),
            slats.optional("gap-range", kinds.range()),
            slats.orDefault("thickness-step", kinds.lengthOrNone(), step()).value(),
            slats.orDefault("run", run, RackFile.Run.THROUGH),
            slats.orDefault("overhang", kinds.lengthOrNone(), Length.ZERO).value());
    slats.close();
    return read;
  }

  private Length step() {
    return units == Unit.INCH ? Length.inches(1, 16) : Length.mm(2);
  }
}
