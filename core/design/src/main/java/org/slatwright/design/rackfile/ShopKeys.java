package org.slatwright.design.rackfile;

import java.util.Optional;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/** The keys of {@code shop}. */
record ShopKeys(Kinds kinds, Unit units) {

  private static final String CUTTER =
      "{ process: router, tool: 3.175 } or { process: laser, kerf: 0.15 }";

  /** How the jig is cut. */
  private enum Process {
    ROUTER("router"),
    LASER("laser");

    private final String word;

    Process(String word) {
      this.word = word;
    }
  }

  RackFile.Shop read(Fields top) {
    Fields shop = top.group("shop", "{ kerf: 3.2, end-trim: 10 }");
    RackFile.Shop read =
        new RackFile.Shop(
            shop.orDefault("kerf", kinds.fineLength(), tenthsOr32nds(32, 4)).value(),
            shop.orDefault("end-trim", kinds.lengthOrNone(), tenthsOr32nds(100, 12)).value(),
            shop.optional("bit-reach", kinds.length()),
            shop.orDefault("jig-sheet", kinds.length(), tenthsOr32nds(60, 8)),
            shop.value("cutter").flatMap(value -> cutter(value.asGroup(CUTTER))),
            shop.orDefault("paper", Kinds.oneOf(Paper.values(), Paper::word), paper()).value());
    shop.close();
    return read;
  }

  /** A default in tenths of a millimetre, or in 32nds of an inch in an inch file. */
  private Length tenthsOr32nds(long tenths, long thirtySeconds) {
    return units == Unit.INCH ? Length.inches(thirtySeconds, 32) : Length.mm(tenths).dividedBy(10);
  }

  private Paper paper() {
    return units == Unit.INCH ? Paper.LETTER : Paper.A4;
  }

  private Optional<RackFile.Cutter> cutter(Fields cutter) {
    Kind<Process> processes = Kinds.oneOf(Process.values(), process -> process.word);
    boolean named = cutter.value("process").isPresent();
    Optional<Given<Process>> process =
        named
            ? cutter.optional("process", processes)
            : Optional.of(cutter.required("process", processes));
    Optional<Value> tool = cutter.value("tool");
    Optional<Value> kerf = cutter.value("kerf");
    cutter.close();
    if (process.isEmpty() || !named) {
      return Optional.empty();
    }
    boolean laser = process.get().value() == Process.LASER;
    Optional<Value> wrong = laser ? tool : kerf;
    wrong.ifPresent(
        value ->
            value
                .reading()
                .complain(
                    value.place(),
                    laser
                        ? "a laser has no tool; write kerf: 0.15"
                        : "a router has no kerf; write tool: 3.175, the diameter of its bit"));
    return Optional.of(
        laser
            ? new RackFile.Cutter.Laser(cutter.required("kerf", kinds.fineLength()).value())
            : new RackFile.Cutter.Router(cutter.required("tool", kinds.fineLength()).value()));
  }
}
