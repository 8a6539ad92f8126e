package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.design.boards.Board;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.sizing.Supplies.StockLength;

/** The stock lengths and boards of one timber, and those that were cut into. */
final class Supply {

  /**
   * Lanes of one length and price.
   *
   * @param room for pieces, above zero
   * @param available at most that many; empty for as many as are wanted
   * @param lane takes another one
   */
  record Choice(Length room, long price, OptionalInt available, Supplier<Run> lane) {}

  private final Need need;
  private final Saw saw;
  private final Prices prices;
  private final List<Choice> choices = new ArrayList<>();
  private final List<Layout> layouts = new ArrayList<>();

  Supply(Need need, Saw saw, List<StockLength> stocks, List<Board> boards) {
    this.need = need;
    this.saw = saw;
    this.prices = Prices.of(stocks);
    stocks.forEach(this::offer);
    offer(boards);
  }

  /**
   * How good a plan that misses nothing is, once it is laid.
   *
   * @param unit that the solution's costs were counted in
   */
  String quality(CuttingSolution solution, long unit, LengthFormat lengths) {
    boolean buys = layouts().stream().anyMatch(layout -> layout.blank().source() == Source.BOUGHT);
    return prices.quality(solution, unit, buys, lengths);
  }

  List<Choice> choices() {
    return List.copyOf(choices);
  }

  /** Those that were cut into. */
  List<Layout> layouts() {
    return layouts.stream().filter(Layout::isTouched).toList();
  }

  private void offer(StockLength stock) {
    Blank blank = Blank.of(stock, need, saw);
    Length room = new Layout(blank, saw.kerf()).runs().get(0).room();
    OptionalInt available = stock.onHand().map(OptionalInt::of).orElseGet(OptionalInt::empty);
    if (room.isPositive()) {
      choices.add(new Choice(room, prices.of(stock), available, () -> begin(blank)));
    }
  }

  private Run begin(Blank blank) {
    Layout layout = new Layout(blank, saw.kerf());
    layouts.add(layout);
    return layout.runs().get(0);
  }

  /** Lanes of a length are one choice, from whichever board they come. */
  private void offer(List<Board> boards) {
    Map<Length, List<Owned>> alike = new TreeMap<>();
    for (Board board : boards) {
      Layout layout =
          new Layout(Blank.of(board, Ripping.lanes(board, need.width(), saw)), saw.kerf());
      layouts.add(layout);
      layout.runs().stream()
          .filter(run -> !run.lane().width().isLessThan(need.width()))
          .forEach(
              run ->
                  alike
                      .computeIfAbsent(run.room(), room -> new ArrayList<>())
                      .add(new Owned(layout, run)));
    }
    alike.forEach(
        (room, lanes) ->
            choices.add(
                new Choice(
                    room,
                    prices.ofReclaimed(room),
                    OptionalInt.of(lanes.size()),
                    () -> take(lanes))));
  }

  /** From a board that is cut into already, where there is one: the fewest boards are touched. */
  private static Run take(List<Owned> lanes) {
    Owned taken =
        lanes.stream().filter(lane -> lane.board.isTouched()).findFirst().orElse(lanes.get(0));
    lanes.remove(taken);
    return taken.run;
  }

  private record Owned(Layout board, Run run) {}
}
