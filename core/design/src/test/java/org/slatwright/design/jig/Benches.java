package org.slatwright.design.jig;

import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/** Stock as it is measured at a bench: to the tenth of a millimetre or the 64th of an inch. */
public class Benches extends DomainContextBase {

  @Provide
  public Arbitrary<Bench> benches() {
    return Arbitraries.of(Unit.values()).flatMap(Benches::in);
  }

  static Arbitrary<Bench> in(Unit unit) {
    Arbitrary<Length> width = lengths(unit, 24, 95);
    Arbitrary<Length> depth = lengths(unit, 18, 95);
    Arbitrary<Length> narrower = lengths(unit, 0, 12);
    Arbitrary<Length> height = lengths(unit, 30, 145);
    Arbitrary<Length> dowel = lengths(unit, 5, 16);
    Arbitrary<Length> sheet = lengths(unit, 3, 18.5);
    return Combinators.combine(width, depth, narrower, height, dowel, Arbitraries.of(1, 2), sheet)
        .as(
            (w, d, less, h, bit, dowels, s) ->
                new Bench(unit, w, d, w.minus(less), h, bit, dowels, s, bush(bit, h)));
  }

  /** Half of them with a bush half as thick again as the bit: which, the height decides. */
  private static Optional<Length> bush(Length bit, Length height) {
    boolean has = height.wholeTimes(Length.mm(1)) % 2 == 0;
    return has ? Optional.of(bit.plus(bit.half())) : Optional.empty();
  }

  private static Arbitrary<Length> lengths(Unit unit, double from, double to) {
    Length step = unit == Unit.INCH ? Length.inches(1, 64) : Bench.mm(0.1);
    return Arbitraries.longs()
        .between(
            Bench.mm(from).wholeTimes(step) + (from > 0 ? 1 : 0), Bench.mm(to).wholeTimes(step))
        .map(step::times);
  }
}
