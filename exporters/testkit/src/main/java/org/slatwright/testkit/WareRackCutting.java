package org.slatwright.testkit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.testkit.SampleSaw.Wanted;

/**
 * How the {@link WareRack} is cut: of a bought length and two on hand, slats with two spacers, and
 * dowels from rod.
 */
final class WareRackCutting {

  private static final BigDecimal FRAME_PRICE = new BigDecimal("5.90");
  private static final BigDecimal SLAT_PRICE = new BigDecimal("4.4");

  private final LengthFormat lengths;
  private final SampleSaw saw;
  private final Length bought;
  private final Length onHand;
  private final Length rod;
  private final Length interior;
  private final CutLine upright;
  private final CutLine rail;
  private final CutLine slat;
  private final CutLine dowel;

  /** Of the lines of the cut list, in their order. */
  WareRackCutting(Unit unit, Length interior, List<CutLine> cutList) {
    lengths = new LengthFormat(unit);
    saw =
        new SampleSaw(
            unit.metricOrInch(Length.roundedMm(3.2), Length.inches(1, 8)),
            unit.metricOrInch(Length.mm(10), Length.inches(1, 2)));
    bought = unit.metricOrInch(Length.mm(2400), Length.inches(96, 1));
    onHand = unit.metricOrInch(Length.mm(650), Length.inches(26, 1));
    rod = unit.metricOrInch(Length.mm(1000), Length.inches(36, 1));
    this.interior = interior;
    upright = cutList.get(0);
    rail = cutList.get(1);
    slat = cutList.get(2);
    dowel = cutList.get(3);
  }

  CuttingPlan plan() {
    Volume volume = volume(upright.part()).plus(volume(slat.part()));
    return new CuttingPlan(
        List.of(
            timber(upright, "proved: no plan costs less than 5.90", frameBoards()),
            timber(slat, "proved: no plan costs less than 4.40", slatBoards()),
            timber(dowel, "proved: no plan takes fewer rods", rods())),
        List.of(),
        List.of(
            new SparePiece(
                "X1",
                "spacer as wide as the interior",
                "Stand the frames this far apart.",
                Stock.SLAT,
                interior,
                2,
                2)),
        List.of(
            bought(upright, bought, Optional.of(FRAME_PRICE)),
            bought(slat, bought, Optional.of(SLAT_PRICE)),
            bought(dowel, rod, Optional.empty()),
            loose(
                Optional.of(6),
                "brad " + lengths.section(Length.mm(40), Length.roundedMm(1.2)),
                ""),
            loose(Optional.empty(), "wood glue", "12 g of it")),
        Optional.of(FRAME_PRICE.add(SLAT_PRICE)),
        volume);
  }

  private List<CutBoard> frameBoards() {
    Wanted one = wanted(upright);
    Wanted two = wanted(rail);
    return List.of(
        saw.cut(
            board(List.of("F1"), Source.BOUGHT, bought, upright, Optional.of(FRAME_PRICE)),
            List.of(one, one, two, two),
            Optional.of("1 rail")),
        saw.cut(
            board(List.of("F2", "F3"), Source.ON_HAND, onHand, upright, Optional.empty()),
            List.of(one),
            Optional.empty()));
  }

  private List<CutBoard> slatBoards() {
    Wanted one = wanted(slat);
    Wanted spacer = new Wanted("X1", true, interior);
    return List.of(
        saw.cut(
            board(List.of("S1"), Source.BOUGHT, bought, slat, Optional.of(SLAT_PRICE)),
            List.of(one, one, one, spacer, spacer),
            Optional.empty()));
  }

  private List<CutBoard> rods() {
    List<Wanted> dowels =
        IntStream.range(0, dowel.part().quantity()).mapToObj(i -> wanted(dowel)).toList();
    return List.of(
        saw.cut(
            board(List.of("D1"), Source.BOUGHT, rod, dowel, Optional.empty()),
            dowels,
            Optional.of("8 dowels")));
  }

  private static Wanted wanted(CutLine line) {
    return new Wanted(line.part().mark(), false, line.part().shape().length());
  }

  private static CutBoard board(
      List<String> marks, Source source, Length length, CutLine line, Optional<BigDecimal> price) {
    return new CutBoard(
        marks,
        source,
        length,
        line.part().shape().width(),
        line.part().shape().thickness(),
        price,
        List.of(),
        List.of(),
        List.of());
  }

  private TimberCuts timber(CutLine line, String quality, List<CutBoard> boards) {
    return new TimberCuts(
        line.part().material().stock(),
        line.timber(),
        saw.kerf(),
        saw.endTrim(),
        boards,
        SampleSaw.settings(boards),
        quality,
        List.of());
  }

  private static Purchase bought(CutLine line, Length length, Optional<BigDecimal> price) {
    return new Purchase(line.timber(), Optional.of(1), Optional.of(length), price, price, "");
  }

  private static Purchase loose(Optional<Integer> quantity, String what, String note) {
    return new Purchase(what, quantity, Optional.empty(), Optional.empty(), Optional.empty(), note);
  }

  private Volume volume(Part part) {
    return Volume.of(bought, part.shape().width(), part.shape().thickness());
  }
}
