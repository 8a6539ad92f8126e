package org.slatwright.design.rackfile;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;

/** The keys of {@code timber}. */
record TimberKeys(Kinds kinds) {

  private static final int LONGEST_NAME = 100;
  private static final int MOST_ALIKE = 10_000;
  private static final String FRAME = "{ section: 44 x 44 mm }";
  private static final String SLATS = "{ section: 18 x 95 mm }";
  private static final String LENGTH = "{ length: 2400 mm, price: 5.90 }";
  private static final String BOARD = "{ length: 980 mm, width: 92 mm, thickness: 16 mm }";

  RackFile.Timber read(Fields top) {
    Fields timber = top.requiredGroup("timber", "{ frame: " + FRAME + ", slats: " + SLATS + " }");
    RackFile.Timber read =
        new RackFile.Timber(
            frame(timber.requiredGroup("frame", FRAME)),
            rails(timber),
            slats(timber.requiredGroup("slats", SLATS)),
            dowel(timber.group("dowel", "{ diameter: 10 mm, rod-length: 1000 mm }")));
    timber.close();
    return read;
  }

  private RackFile.FrameStock frame(Fields frame) {
    RackFile.FrameStock read =
        new RackFile.FrameStock(
            frame.required("section", kinds.section(), "44 x 44 mm"),
            frame.optional("species", Kinds.text(LONGEST_NAME)),
            lengths(frame));
    frame.close();
    return read;
  }

  private Optional<RackFile.RailStock> rails(Fields timber) {
    Optional<Value> rails = timber.value("rails");
    if (rails.isEmpty()) {
      return Optional.empty();
    }
    Fields group = rails.get().asGroup("{ section: 44 x 70 mm }");
    RackFile.RailStock read =
        new RackFile.RailStock(
            group.required("section", kinds.section(), "44 x 70 mm"), lengths(group));
    group.close();
    return Optional.of(read);
  }

  private List<RackFile.StockLength> lengths(Fields stock) {
    return stock.list("lengths", "[ " + LENGTH + " ]", this::stockLength);
  }

  private RackFile.StockLength stockLength(Value entry) {
    Fields length = entry.asGroup(LENGTH);
    RackFile.StockLength read =
        new RackFile.StockLength(
            length.required("length", kinds.length(), "2400 mm"),
            length.optional("price", Kinds.price()).map(Given::value),
            length.optional("on-hand", Kinds.count(1, MOST_ALIKE)).map(Given::value));
    length.close();
    return read;
  }

  private RackFile.SlatStock slats(Fields slats) {
    RackFile.SlatStock read =
        new RackFile.SlatStock(
            slats.optional("section", kinds.section()),
            lengths(slats),
            slats.list("boards", "[ " + BOARD + " ]", this::board));
    slats.close();
    if (slats.value("section").isEmpty() && slats.value("lengths").isPresent()) {
      slats.complain("lengths needs a section in timber.slats; write section: 18 x 95 mm");
    } else if (slats.value("section").isEmpty() && slats.value("boards").isEmpty()) {
      slats.complain("timber.slats needs section: 18 x 95 mm, or boards: [ " + BOARD + " ]");
    }
    return read;
  }

  private Given<RackFile.Board> board(Value entry) {
    Fields board = entry.asGroup(BOARD);
    Optional<Given<Length>> length = board.demanded("length", kinds.length(), "980 mm");
    RackFile.Board read =
        new RackFile.Board(
            length.map(Given::value).orElse(Kinds.LEAST),
            board.required("width", kinds.length(), "92 mm").value(),
            board.required("thickness", kinds.length(), "16 mm").value(),
            board.orDefault("count", Kinds.count(1, MOST_ALIKE), 1).value(),
            avoid(board, length));
    board.close();
    return new Given<>(read, entry.path(), entry.place());
  }

  private List<RackFile.Range> avoid(Fields board, Optional<Given<Length>> length) {
    return board.list("avoid", "[ 0..25, 480..530 ]", entry -> stretch(entry, length)).stream()
        .flatMap(Optional::stream)
        .sorted(Comparator.comparing(RackFile.Range::from).thenComparing(RackFile.Range::to))
        .toList();
  }

  private Optional<RackFile.Range> stretch(Value entry, Optional<Given<Length>> board) {
    Optional<RackFile.Range> range = entry.as(kinds.range()).map(Given::value);
    if (range.isPresent()
        && board.isPresent()
        && range.get().to().isMoreThan(board.get().value())) {
      entry
          .reading()
          .complain(
              entry.place(),
              "avoid runs past the end of its board, which is " + board.get().value() + " long");
    }
    return range;
  }

  private RackFile.Dowel dowel(Fields dowel) {
    RackFile.Dowel read =
        new RackFile.Dowel(
            dowel.optional("diameter", kinds.length()),
            dowel.optional("rod-length", kinds.length()),
            dowel.optional("length", kinds.length()),
            dowel.optional("price", Kinds.price()).map(Given::value));
    dowel.close();
    if (read.rodLength().isPresent() && read.length().isPresent()) {
      dowel.complain(
          "timber.dowel has both rod-length and length; keep rod-length for dowels cut from rod,"
              + " length for dowels bought cut");
    }
    return read;
  }
}
