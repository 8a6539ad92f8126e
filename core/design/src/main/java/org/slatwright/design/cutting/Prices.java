package org.slatwright.design.cutting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.sizing.Supplies.StockLength;

/**
 * What each stock length is reckoned at, so that the cheapest plan is the one the maker wants:
 *
 * <ul>
 *   <li>where one has a price, plans are compared in money. What is on hand without a price is
 *       owned and costs nothing; what can be bought without a price is reckoned as dear for its
 *       length as the dearest;
 *   <li>where none has, plans are compared by the length that is bought; what is on hand costs
 *       nothing;
 *   <li>where nothing can be bought, by the length that is taken of what is on hand.
 * </ul>
 */
final class Prices {

  /** Prices are read with four decimals at most. */
  private static final int DECIMALS = 4;

  private enum Basis {
    MONEY,
    BOUGHT,
    OWNED
  }

  private final Basis basis;
  private final Optional<StockLength> dearest;
  private final boolean reckoned;

  private Prices(Basis basis, Optional<StockLength> dearest, boolean reckoned) {
    this.basis = basis;
    this.dearest = dearest;
    this.reckoned = reckoned;
  }

  static Prices of(List<StockLength> stocks) {
    Optional<StockLength> dearest =
        stocks.stream()
            .filter(stock -> stock.price().isPresent())
            .max(Comparator.comparing(Prices::perNanometre));
    boolean unpriced = stocks.stream().anyMatch(Prices::isBoughtUnpriced);
    Basis unlessMoney = unpriced ? Basis.BOUGHT : Basis.OWNED;
    return new Prices(
        dearest.isPresent() ? Basis.MONEY : unlessMoney, dearest, dearest.isPresent() && unpriced);
  }

  private static boolean isBoughtUnpriced(StockLength stock) {
    return stock.price().isEmpty() && stock.onHand().isEmpty();
  }

  private static BigDecimal perNanometre(StockLength stock) {
    return stock
        .price()
        .orElseThrow()
        .divide(BigDecimal.valueOf(stock.length().nanometres()), 30, RoundingMode.HALF_UP);
  }

  /** In ten-thousandths of the currency, or in nanometres. */
  long of(StockLength stock) {
    return switch (basis) {
      case MONEY -> stock.price().map(Prices::units).orElseGet(() -> withoutPrice(stock));
      case BOUGHT -> isBoughtUnpriced(stock) ? stock.length().nanometres() : 0;
      case OWNED -> stock.length().nanometres();
    };
  }

  /** Of so much of a reclaimed board. */
  long ofReclaimed(Length length) {
    return basis == Basis.OWNED ? length.nanometres() : 0;
  }

  private static long units(BigDecimal price) {
    return price.movePointRight(DECIMALS).longValueExact();
  }

  private long withoutPrice(StockLength stock) {
    if (stock.onHand().isPresent()) {
      return 0;
    }
    StockLength like = dearest.orElseThrow();
    return new BigDecimal(BigInteger.valueOf(units(like.price().orElseThrow())))
        .multiply(BigDecimal.valueOf(stock.length().nanometres()))
        .divide(BigDecimal.valueOf(like.length().nanometres()), 0, RoundingMode.CEILING)
        .longValueExact();
  }

  /**
   * How good a plan that misses nothing is.
   *
   * @param unit that the solution's costs were counted in
   * @param buys whether it buys anything, be it for nothing
   */
  String quality(CuttingSolution solution, long unit, boolean buys, LengthFormat lengths) {
    long cost = solution.cost() * unit;
    if (cost == 0) {
      return buys ? "what is bought costs nothing" : "nothing needs to be bought";
    }
    if (solution.isProved()) {
      return "proved: " + better(shown(cost, lengths)) + aside();
    }
    long least = solution.lowerBound() * unit;
    return "within %s of the least that is possible, %s%s"
        .formatted(shown(cost - least, lengths), shown(least, lengths), aside());
  }

  private String better(String shown) {
    return switch (basis) {
      case MONEY -> "no plan costs less than " + shown;
      case BOUGHT -> "no plan takes less timber than " + shown;
      case OWNED -> "no plan takes less of what is on hand than " + shown;
    };
  }

  private String aside() {
    return reckoned ? ", what has no price reckoned as dear as the dearest" : "";
  }

  private String shown(long cost, LengthFormat lengths) {
    return basis == Basis.MONEY
        ? Money.shown(BigDecimal.valueOf(cost, DECIMALS))
        : lengths.withUnit(new Length(cost));
  }
}
