package org.slatwright.design.rackfile;

import java.util.Optional;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/** The keys of {@code shop}. */
record ShopKeys(Kinds kinds, Unit units) {

  private static final String CUTTER =
      "{ process: router, tool: 3.175 mm } or { process: laser, kerf: 0.15 mm }";

  /** How the jig is cut. */
  private enum Process {
    ROUTER("router"),
    LASER("laser");

    private final String word;

    Process(String word) {
      this.word = word;
    }
  }

  /** How a router leaves inside corners. */
  private enum Corners {
    ROUND("round"),
    RELIEVED("relieved");

    private final String word;

    Corners(String word) {
      this.word = word;
    }
  }

  RackFile.Shop read(Fields top) {
    Fields shop = top.group("shop", "{ kerf: 3.2 mm, end-trim: 10 mm }");
    RackFile.Shop read =
        new RackFile.Shop(
            shop.orDefault("kerf", kinds.fineLength(), tenthsOr32nds(32, 4)).value(),
            shop.orDefault("end-trim", kinds.lengthOrNone(), tenthsOr32nds(100, 12)).value(),
            shop.optional("bit-reach", kinds.length()),
            shop.orDefault("jig-sheet", kinds.length(), tenthsOr32nds(60, 8)),
            shop.orDefault("sheet-size", kinds.section(), sheet()),
            shop.optional("guide-bush", kinds.fineLength()),
            shop.value("cutter").flatMap(value -> cutter(value.asGroup(CUTTER))),
            shop.orDefault("paper", Kinds.oneOf(Paper.values(), Paper::word), paper()).value(),
            shop.orDefault("print-margin", kinds.printMargin(), Length.inches(1, 4)).value());
    shop.close();
    return read;
  }

  /** A default in tenths of a millimetre, or in 32nds of an inch in an inch file. */
  private Length tenthsOr32nds(long tenths, long thirtySeconds) {
    return units == Unit.INCH ? Length.inches(thirtySeconds, 32) : Length.mm(tenths).dividedBy(10);
  }

  private Section sheet() {
    return units == Unit.INCH
        ? new Section(Length.inches(24, 1), Length.inches(16, 1))
        : new Section(Length.mm(600), Length.mm(400));
  }

  private Paper paper() {
    return units == Unit.INCH ? Paper.LETTER : Paper.A4;
  }

  private Optional<RackFile.Cutter> cutter(Fields cutter) {
    Optional<Given<Process>> process =
        cutter.demanded("process", Kinds.oneOf(Process.values(), p -> p.word), "router");
    Optional<RackFile.Cutter> read =
        process.map(given -> given.value() == Process.LASER ? laser(cutter) : router(cutter));
    cutter.value("tool"); // known, even when what goes with it is not
    cutter.value("kerf");
    cutter.value("inside-corners");
    cutter.close();
    return read;
  }

  private RackFile.Cutter router(Fields cutter) {
    cutter.refuse("kerf", "a router has no kerf; write tool, the diameter of its bit");
    return new RackFile.Cutter.Router(
        cutter.required("tool", kinds.fineLength(), "3.175 mm").value(),
        cutter
            .orDefault("inside-corners", Kinds.oneOf(Corners.values(), c -> c.word), Corners.ROUND)
            .value()
            .equals(Corners.RELIEVED));
  }

  private RackFile.Cutter laser(Fields cutter) {
    cutter.refuse("tool", "a laser has no tool; write kerf, the width of its cut");
    cutter.refuse("inside-corners", "a laser cuts them square");
    return new RackFile.Cutter.Laser(
        cutter.required("kerf", kinds.fineLength(), "0.15 mm").value());
  }
}
