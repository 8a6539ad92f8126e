package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.wood.Climate;

/** The outermost keys of format 1. */
final class FormatOne {

  private static final int LONGEST_TITLE = 200;

  private final Reading reading;

  FormatOne(Reading reading) {
    this.reading = reading;
  }

  /** The whole file; nonsense after a complaint. */
  RackFile rackFile(Node.Mapping root, Map<String, Place> keys) {
    Fields top = new Fields(root, "", reading, true);
    top.required("slatwright", format(), "1");
    Given<String> title = top.required("title", Kinds.text(LONGEST_TITLE), "Seed-tray rack");
    Unit units = top.orDefault("units", Kinds.oneOf(Unit.values(), Unit::symbol), Unit.MM).value();
    Kinds kinds = new Kinds(units);
    Length step = units == Unit.INCH ? Length.inches(1, 16) : Length.mm(1);
    Length increment = top.orDefault("increment", kinds.increment(), step).value();
    Optional<Length> feetAbove = feetAbove(top, kinds, units);
    List<RackFile.Held> holds = new HeldKeys(kinds).read(top);
    RackFile file =
        new RackFile(
            title,
            units,
            increment,
            feetAbove,
            holds,
            new TimberKeys(kinds).read(top),
            new RackKeys(kinds, holds).read(top),
            new SlatKeys(kinds, units).read(top),
            new JointKeys(kinds).read(top),
            new ShopKeys(kinds, units).read(top),
            load(top),
            keys,
            new Written(root));
    top.close();
    reading.complainOfUnknownKeys();
    return file;
  }

  private static Optional<Length> feetAbove(Fields top, Kinds kinds, Unit units) {
    if (units == Unit.MM) {
      top.refuse("feet-above", "only an inch plan tells feet; write units: in with it");
    }
    return top.optional("feet-above", kinds.length()).map(Given::value);
  }

  private static Kind<Integer> format() {
    return new Kind<>(
        "1",
        1,
        text -> {
          if (text.equals("1")) {
            return 1;
          }
          throw new Unreadable("is another format", "this version reads format 1: slatwright: 1");
        });
  }

  private static RackFile.Load load(Fields top) {
    Fields load = top.group("load", "{ per-shelf: 15 kg }");
    RackFile.Load read =
        new RackFile.Load(
            load.optional("per-shelf", Kinds.mass()),
            load.orDefault(
                "climate", Kinds.oneOf(Climate.values(), Climate::word), Climate.INDOORS));
    load.close();
    return read;
  }
}
