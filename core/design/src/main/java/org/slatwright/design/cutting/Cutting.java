package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Quantities;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.design.boards.Board;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Supplies;
import org.slatwright.design.sizing.Supplies.StockLength;

/** Plans the cutting of a rack. */
public final class Cutting {

  private final Rack rack;
  private final Supplies supplies;
  private final LengthFormat lengths;
  private final BuyingList buying;
  private final List<LaidTimber> timbers = new ArrayList<>();
  private final List<ShelfSlats> shelves = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private Cutting(Rack rack) {
    this.rack = rack;
    this.supplies = rack.supplies();
    this.lengths = rack.lengths();
    this.buying = new BuyingList(lengths);
  }

  /** What to buy and how every stock length is cut. */
  public static CutRack plan(Rack rack, Assembly assembly, Quantities quantities) {
    Cutting cutting = new Cutting(rack);
    Need.of(assembly, cutting.lengths).forEach(cutting::cut);
    cutting.buying.addFixings(assembly);
    cutting.buying.addGlue(quantities.glue());
    return new CutRack(cutting.plan(), cutting.findings);
  }

  private void cut(Need need) {
    Saw saw = Saw.of(supplies, need.stock());
    List<StockLength> stocks = stocks(need.stock());
    List<Board> boards = need.stock() == Stock.SLAT ? supplies.boards() : List.of();
    if (!boards.isEmpty() && rack.boardChoice().isPresent()) {
      ChosenBoards chosen = new ChosenBoards(rack.boardChoice().get(), boards, need, saw);
      timbers.add(chosen.laid());
      shelves.addAll(chosen.shelves());
    } else if (!stocks.isEmpty() || !boards.isEmpty()) {
      LaidTimber laid = Filling.fill(need, saw, new Supply(need, saw, stocks, boards), lengths);
      timbers.add(laid);
      buying.add(laid);
      new Shortage(lengths).of(laid, stocks).forEach(findings::add);
    } else if (need.stock() == Stock.DOWEL_ROD) {
      buying.addDowels(need, saw.kerf(), supplies.dowelPrice());
    } else {
      buying.addRunning(need, saw.kerf());
    }
  }

  private List<StockLength> stocks(Stock stock) {
    return switch (stock) {
      case FRAME -> supplies.frame();
      case RAIL -> supplies.rails();
      case SLAT -> supplies.slats();
      case DOWEL_ROD -> supplies.rods();
    };
  }

  private CuttingPlan plan() {
    List<SparePiece> spares = new ArrayList<>();
    Spares offcuts = new Spares(timbers);
    for (SpareKind kind : SpareKind.of(rack)) {
      spares.add(offcuts.lay("X" + (spares.size() + 1), kind));
    }
    return new CuttingPlan(
        timbers.stream().map(timber -> CutTimber.of(timber, rack.units())).toList(),
        shelves,
        spares,
        buying.lines(),
        buying.cost(),
        buying.volume());
  }
}
