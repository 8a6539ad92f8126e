package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Optional;

/** The keys of {@code rack}. */
record RackKeys(Kinds kinds) {

  private static final int MOST_BAYS = 50;
  private static final int MOST_OPENINGS = 99;
  private static final String OPENINGS = "[ 300 mm, { clear: 160 mm, count: 3 }, { clear: even } ]";

  RackFile.Rack read(Fields top) {
    Fields rack = top.group("rack", "{ bays: 1, upright: 1500 mm }");
    RackFile.Rack read =
        new RackFile.Rack(
            rack.orDefault("bays", Kinds.count(1, MOST_BAYS), 1).value(),
            rack.optional("interior-width", kinds.length()),
            rack.optional("rail-length", kinds.length()),
            rack.optional("upright", kinds.length()),
            rack.optional("foot", kinds.lengthOrNone()),
            rack.value("openings").map(this::openings),
            rack.optional("top", top()));
    rack.close();
    return read;
  }

  private Given<List<RackFile.Opening>> openings(Value value) {
    List<RackFile.Opening> openings =
        value.asList(OPENINGS).stream().map(this::opening).flatMap(Optional::stream).toList();
    long shelves = openings.stream().mapToLong(RackFile.Opening::count).sum() + 1;
    if (shelves > MOST_OPENINGS + 1) {
      value
          .reading()
          .complain(value.place(), "openings make " + shelves + " shelves; 100 are the most");
    }
    return new Given<>(openings, value.path(), value.place());
  }

  private Optional<RackFile.Opening> opening(Value entry) {
    if (!entry.isGroup()) {
      return entry.as(clear()).map(clear -> new RackFile.Opening(clear, 1));
    }
    Fields opening = entry.asGroup("{ clear: 160 mm, count: 3 }");
    Given<RackFile.Clear> clear = opening.required("clear", clear(), "160 mm");
    int count = opening.orDefault("count", Kinds.count(1, MOST_OPENINGS), 1).value();
    opening.close();
    return Optional.of(new RackFile.Opening(clear, count));
  }

  private Kind<RackFile.Clear> clear() {
    return kinds
        .length()
        .<RackFile.Clear>as(RackFile.Clear.Fixed::new)
        .orWord("even", new RackFile.Clear.Even());
  }

  private Kind<RackFile.Top> top() {
    return kinds
        .lengthOrNone()
        .<RackFile.Top>as(RackFile.Top.Above::new)
        .orWord("flush", new RackFile.Top.Flush());
  }
}
