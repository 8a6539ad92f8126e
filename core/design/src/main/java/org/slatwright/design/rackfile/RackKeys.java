package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Optional;

/**
 * The keys of {@code rack}.
 *
 * @param holds the things that an opening may be for
 */
record RackKeys(Kinds kinds, List<RackFile.Held> holds) {

  private static final int MOST_BAYS = 50;
  private static final int MOST_OPENINGS = 99;
  private static final Kind<RackFile.Stands> STANDS =
      Kinds.oneOf(RackFile.Stands.values(), RackFile.Stands::word);
  private static final Kind<RackFile.Brace> BRACE =
      Kinds.oneOf(RackFile.Brace.values(), RackFile.Brace::word);
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
            rack.optional("top", top()),
            rack.orDefault("stands", STANDS, RackFile.Stands.FREE).value(),
            rack.orDefault("brace", BRACE, RackFile.Brace.NONE).value());
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
    Given<RackFile.Clear> clear = clear(opening);
    int count = opening.orDefault("count", Kinds.count(1, MOST_OPENINGS), 1).value();
    opening.close();
    return Optional.of(new RackFile.Opening(clear, count));
  }

  private Given<RackFile.Clear> clear(Fields opening) {
    if (opening.value("for").isEmpty()) {
      return opening.required("clear", clear(), "160 mm");
    }
    opening.refuse("clear", "an opening that is for a thing takes its clear height from it");
    return opening.required("for", thing(), "seed tray");
  }

  private Kind<RackFile.Clear> thing() {
    List<String> names = holds.stream().map(RackFile.Held::name).toList();
    String forms = names.isEmpty() ? "the name of a thing in holds" : String.join(", ", names);
    return new Kind<>(
        forms,
        new RackFile.Clear.Even(),
        text ->
            holds.stream()
                .filter(thing -> thing.name().equals(text))
                .findFirst()
                .map(RackFile.Clear.For::new)
                .orElseThrow(() -> notHeld(text, names)));
  }

  private static Unreadable notHeld(String text, List<String> names) {
    String advice =
        NearestKey.to(text, names)
            .map(near -> "did you mean " + near + "?")
            .orElse(names.isEmpty() ? "list it there" : "write " + String.join(", ", names));
    return new Unreadable("is not in holds", advice);
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
