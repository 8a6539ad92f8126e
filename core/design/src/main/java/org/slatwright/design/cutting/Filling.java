package org.slatwright.design.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Part;
import org.slatwright.design.cutting.Need.Shortfall;
import org.slatwright.design.cutting.Supply.Choice;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingStock;
import org.slatwright.design.cuttingstock.Effort;

/** Lays the pieces of one timber in the lanes of its supply, by the cheapest plan. */
final class Filling {

  private final Need need;
  private final Saw saw;
  private final Supply supply;
  private final List<Choice> choices;
  private final TreeMap<Length, Deque<Part>> waiting = new TreeMap<>(Comparator.reverseOrder());

  private Filling(Need need, Saw saw, Supply supply) {
    this.need = need;
    this.saw = saw;
    this.supply = supply;
    this.choices = supply.choices();
    for (Part part : need.parts()) {
      Deque<Part> queue =
          waiting.computeIfAbsent(part.shape().length(), length -> new ArrayDeque<>());
      for (int i = 0; i < part.quantity(); i++) {
        queue.add(part);
      }
    }
  }

  static LaidTimber fill(Need need, Saw saw, Supply supply, LengthFormat lengths) {
    return new Filling(need, saw, supply).fill(lengths);
  }

  /** In the largest units that say every length and every price, since all that is exact. */
  private LaidTimber fill(LengthFormat lengths) {
    List<Length> wanted = List.copyOf(waiting.keySet());
    long nanometres =
        gcd(
            Stream.of(wanted.stream(), choices.stream().map(Choice::room), Stream.of(saw.kerf()))
                .flatMap(some -> some)
                .mapToLong(Length::nanometres));
    long money = gcd(choices.stream().mapToLong(Choice::price));
    CuttingSolution solution =
        CuttingStock.solve(
            new CuttingProblem(
                saw.kerf().nanometres() / nanometres,
                0,
                choices.stream()
                    .map(
                        choice ->
                            new CuttingProblem.Stock(
                                choice.room().nanometres() / nanometres,
                                choice.price() / money,
                                choice.available()))
                    .toList(),
                wanted.stream()
                    .map(
                        length ->
                            new CuttingProblem.Demand(
                                length.nanometres() / nanometres, waiting.get(length).size()))
                    .toList()),
            Effort.USUAL);
    solution.patterns().forEach(pattern -> lay(pattern, wanted));
    List<Shortfall> missing = missing();
    return new LaidTimber(
        need,
        saw,
        supply.layouts(),
        missing,
        missing.isEmpty()
            ? supply.quality(solution, money, lengths)
            : "not enough timber: missing " + need.names(missing));
  }

  /** The greatest common divisor; 1 when all are zero. */
  private static long gcd(LongStream numbers) {
    long common = numbers.reduce(0, Filling::gcd);
    return common == 0 ? 1 : common;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  private void lay(CuttingSolution.Pattern pattern, List<Length> wanted) {
    for (int board = 0; board < pattern.times(); board++) {
      Run run = choices.get(pattern.stock()).lane().get();
      for (int i = 0; i < wanted.size(); i++) {
        Length length = wanted.get(i);
        for (int piece = 0; piece < pattern.pieces().get(i); piece++) {
          run.cut(waiting.get(length).remove().mark(), false, length);
        }
      }
    }
  }

  private List<Shortfall> missing() {
    List<Shortfall> missing = new ArrayList<>();
    for (Part part : need.parts()) {
      int left = (int) waiting.get(part.shape().length()).stream().filter(part::equals).count();
      if (left > 0) {
        missing.add(new Shortfall(part, left));
      }
    }
    return missing;
  }
}
