package org.slatwright.design.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.api.plan.Purchase;

/** What to buy, line by line. */
final class BuyingList {

  private final LengthFormat lengths;
  private final List<Purchase> lines = new ArrayList<>();
  private Volume volume = Volume.ZERO;

  BuyingList(LengthFormat lengths) {
    this.lengths = lengths;
  }

  List<Purchase> lines() {
    return List.copyOf(lines);
  }

  /** Of all lines; empty when none has a price. */
  Optional<BigDecimal> cost() {
    return lines.stream().flatMap(line -> line.cost().stream()).reduce(BigDecimal::add);
  }

  /** Of the timber; rod is not counted. */
  Volume volume() {
    return volume;
  }

  /** The stock lengths that are bought, the longest first within each price. */
  void add(LaidTimber timber) {
    Map<Bought, Integer> bought = new LinkedHashMap<>();
    for (Layout layout : timber.layouts()) {
      Blank blank = layout.blank();
      if (blank.source() == Source.BOUGHT) {
        bought.merge(new Bought(blank.length(), blank.price()), 1, Integer::sum);
      }
    }
    bought.forEach((stock, count) -> add(timber.need(), stock, count));
  }

  private void add(Need need, Bought stock, int count) {
    lines.add(line(need.timber(), count, Optional.of(stock.length), stock.price, ""));
    addVolume(need, stock.length, count);
  }

  /** Of a timber whose lengths are not listed. */
  void addRunning(Need need, Length kerf) {
    Length running = need.running(kerf);
    lines.add(
        unpriced(
            need.timber(),
            Optional.of(running),
            "in all, cuts included, in lengths that give pieces of "
                + lengths.withUnit(need.longest())));
    addVolume(need, running, 1);
  }

  /** Dowels for which no length of rod is given. */
  void addDowels(Need need, Length kerf, Optional<BigDecimal> price) {
    Part dowel = need.parts().get(0);
    String note =
        price.isPresent()
            ? "bought cut"
            : "or rod: " + lengths.withUnit(need.running(kerf)) + " in all, cuts included";
    lines.add(
        line(need.timber(), dowel.quantity(), Optional.of(dowel.shape().length()), price, note));
  }

  void addFixings(Assembly assembly) {
    Map<String, Integer> kinds = new LinkedHashMap<>();
    assembly.fasteners().forEach(fastener -> kinds.merge(words(fastener), 1, Integer::sum));
    kinds.forEach(
        (words, count) -> lines.add(line(words, count, Optional.empty(), Optional.empty(), "")));
  }

  private String words(Fastener fastener) {
    return fastener.kind().word() + " " + lengths.section(fastener.length(), fastener.diameter());
  }

  void addGlue(Mass glue) {
    String note = glue.withUnit(lengths.unit()) + " in all";
    lines.add(unpriced("wood glue", Optional.empty(), note));
  }

  private void addVolume(Need need, Length length, int count) {
    if (need.stock() != Stock.DOWEL_ROD) {
      volume = volume.plus(Volume.of(length, need.width(), need.thickness()).times(count));
    }
  }

  private static Purchase line(
      String what, int count, Optional<Length> length, Optional<BigDecimal> price, String note) {
    Optional<BigDecimal> cost = price.map(each -> each.multiply(BigDecimal.valueOf(count)));
    return new Purchase(
        what,
        Optional.of(count),
        length,
        price.map(Money::settled),
        cost.map(Money::settled),
        note);
  }

  /** Of what is sold by length or weight, at a price that nobody said. */
  private static Purchase unpriced(String what, Optional<Length> length, String note) {
    return new Purchase(what, Optional.empty(), length, Optional.empty(), Optional.empty(), note);
  }

  private record Bought(Length length, Optional<BigDecimal> price) {}
}
