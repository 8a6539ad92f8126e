package org.slatwright.design.rackfile;

import java.util.Map;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.wood.Climate;

/** The outermost keys of format 1. */
final class FormatOne {

  private static final int LONGEST_TITLE = 200;
  private static final int LONGEST_NAME = 100;
  private static final int MOST_ALIKE = 10_000;
  private static final String HELD =
      "{ name: seed tray, width: 285 mm, depth: 545 mm, height: 60 mm }";

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
    RackFile file =
        new RackFile(
            title,
            units,
            top.orDefault("increment", kinds.increment(), step).value(),
            top.list("holds", "[ " + HELD + " ]", entry -> held(entry, kinds)),
            new TimberKeys(kinds).read(top),
            new RackKeys(kinds).read(top),
            new SlatKeys(kinds).read(top),
            new JointKeys(kinds).read(top),
            new ShopKeys(kinds, units).read(top),
            load(top),
            keys);
    top.close();
    reading.complainOfUnknownKeys();
    return file;
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

  private static RackFile.Held held(Value entry, Kinds kinds) {
    Fields held = entry.asGroup(HELD);
    RackFile.Held read =
        new RackFile.Held(
            held.required("name", Kinds.text(LONGEST_NAME), "seed tray").value(),
            held.required("width", kinds.length(), "285 mm").value(),
            held.required("depth", kinds.length(), "545 mm").value(),
            held.required("height", kinds.length(), "60 mm").value(),
            held.orDefault("across", Kinds.count(1, MOST_ALIKE), 1).value(),
            held.orDefault("clearance", kinds.lengthOrNone(), Length.ZERO).value());
    held.close();
    return read;
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
