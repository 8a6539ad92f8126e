package org.slatwright.testkit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.api.plan.CutBoard.Stretch;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.testkit.SampleSaw.Wanted;

/**
 * How the parts of {@link EveryKind} are cut: a slat ripped from a reclaimed board, a second one
 * that no board is left for, a spacer from what is over.
 */
final class EveryKindCutting {

  private static final SampleSaw SAW = new SampleSaw(Length.mm(3), Length.mm(10));
  private static final BigDecimal PRICE = new BigDecimal("0.95");
  private static final String FRAME = "norway spruce, frame stock 44 × 44 mm";
  private static final String ROD = "dowel rod ø 10 mm, \"ramin\"";

  private EveryKindCutting() {}

  /** Of parts U, R, D, S1 and S2, in this order. */
  static CuttingPlan plan(List<Part> parts) {
    Part missing = parts.get(4);
    return new CuttingPlan(
        List.of(
            frame(parts.get(0), parts.get(1)), rod(parts.get(2)), boards(parts.get(3), missing)),
        List.of(new ShelfSlats(1, 1, List.of("S1", "S2"), Length.mm(10), false)),
        List.of(
            new SparePiece(
                "X1",
                "spacer, \"short\"",
                "Lay it between two slats.",
                Stock.SLAT,
                Length.mm(60),
                2,
                1)),
        List.of(
            new Purchase(
                FRAME,
                Optional.of(2),
                Optional.of(Length.mm(450)),
                Optional.of(PRICE),
                Optional.of(PRICE.add(PRICE)),
                ""),
            new Purchase(
                "brad 40 × 1.2 mm",
                Optional.of(1),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "=a box holds, \"about\" 100"),
            new Purchase(
                "slat stock",
                Optional.empty(),
                Optional.of(Length.mm(100)),
                Optional.empty(),
                Optional.empty(),
                "so much in all")),
        Optional.of(PRICE.add(PRICE)),
        Volume.of(Length.mm(450), Length.mm(44), Length.mm(44)).times(2));
  }

  private static TimberCuts frame(Part upright, Part rail) {
    List<CutBoard> boards =
        List.of(frameBoard("F1", upright, "1 rail"), frameBoard("F2", rail, "1 upright"));
    return timber(Stock.FRAME, FRAME, boards, List.of());
  }

  private static CutBoard frameBoard(String mark, Part part, String gives) {
    return SAW.cut(
        uncut(mark, Source.BOUGHT, Length.mm(450), part, Optional.of(PRICE)),
        List.of(wanted(part)),
        Optional.of(gives));
  }

  private static TimberCuts rod(Part dowel) {
    CutBoard rod =
        SAW.cut(
            uncut("D1", Source.ON_HAND, Length.mm(1000), dowel, Optional.empty()),
            List.of(wanted(dowel)),
            Optional.of("10 dowels"));
    return timber(Stock.DOWEL_ROD, ROD, List.of(rod), List.of());
  }

  /** The second slat would lie over the nail holes of the only board. */
  private static TimberCuts boards(Part ripped, Part missing) {
    Length width = Length.mm(92);
    Length start = Length.mm(30);
    Length spacer = Length.mm(60);
    Length ripping = ripped.shape().width().plus(SAW.kerf());
    Length second = start.plus(ripped.shape().length()).plus(SAW.kerf());
    Length rest = second.plus(spacer).plus(SAW.kerf());
    Length length = Length.mm(300);
    CutBoard board =
        new CutBoard(
            List.of("B1"),
            Source.RECLAIMED,
            length,
            width,
            ripped.shape().thickness(),
            Optional.empty(),
            List.of(
                new Cut(
                    ripped.mark(),
                    false,
                    start,
                    ripped.shape().length(),
                    Length.ZERO,
                    ripped.shape().width()),
                new Cut("X1", true, second, spacer, Length.ZERO, width)),
            List.of(new Stretch(Length.ZERO, Length.mm(25)), new Stretch(Length.mm(200), length)),
            List.of(
                new Offcut(
                    start, ripped.shape().length(), ripping, width.minus(ripping), false, ""),
                new Offcut(rest, length.minus(rest), Length.ZERO, width, false, "")));
    MissingPieces none =
        new MissingPieces(
            missing.mark(),
            1,
            missing.shape().length(),
            missing.shape().width(),
            missing.shape().thickness());
    return timber(Stock.SLAT, "norway spruce, reclaimed boards", List.of(board), List.of(none));
  }

  private static Wanted wanted(Part part) {
    return new Wanted(part.mark(), false, part.shape().length());
  }

  private static CutBoard uncut(
      String mark, Source source, Length length, Part part, Optional<BigDecimal> price) {
    return new CutBoard(
        List.of(mark),
        source,
        length,
        part.shape().width(),
        part.shape().thickness(),
        price,
        List.of(),
        List.of(),
        List.of());
  }

  private static TimberCuts timber(
      Stock stock, String timber, List<CutBoard> boards, List<MissingPieces> missing) {
    List<StopSetting> settings = SampleSaw.settings(boards);
    String quality = missing.isEmpty() ? "proved: no plan costs less" : "not enough boards";
    return new TimberCuts(
        stock, timber, SAW.kerf(), SAW.endTrim(), boards, settings, quality, missing);
  }
}
