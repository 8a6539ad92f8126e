package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class LengthTest {

  /** 25.4 mm to the inch exactly, by the International Yard and Pound Agreement of 1959. */
  @Test
  void inchesAreExactDownToSixtyFourths() {
    assertEquals(Length.roundedMm(25.4), Length.inches(1, 1));
    assertEquals(new Length(396_875), Length.inches(1, 64));
    assertEquals(Length.inches(3, 2), Length.roundedMm(38.1));
  }

  @Test
  void aThirdOfAnInchIsNoLength() {
    assertThrows(ArithmeticException.class, () -> Length.inches(1, 3));
  }

  @Test
  void overflowIsNeverSilent() {
    Length most = new Length(Long.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> most.plus(new Length(1)));
    assertThrows(ArithmeticException.class, () -> most.negated().minus(new Length(2)));
    assertThrows(ArithmeticException.class, () -> most.times(2));
    assertThrows(ArithmeticException.class, () -> new Length(Long.MIN_VALUE).negated());
    assertThrows(ArithmeticException.class, () -> Length.mm(Long.MAX_VALUE));
  }

  @Test
  void whatIsComputedIsRoundedOnceAndMustBeFinite() {
    assertEquals(new Length(333_333), Length.roundedMm(1 / 3.0));
    assertThrows(IllegalArgumentException.class, () -> Length.roundedMm(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Length.roundedMm(Double.POSITIVE_INFINITY));
  }

  @Test
  void lengthsCompare() {
    Length short1 = Length.mm(1);
    Length long2 = Length.mm(2);
    assertTrue(short1.isLessThan(long2) && long2.isMoreThan(short1));
    assertEquals(long2, Length.max(short1, long2));
    assertEquals(short1, Length.min(short1, long2));
    assertTrue(short1.minus(long2).isNegative() && short1.isPositive() && Length.ZERO.isZero());
    assertEquals(short1, short1.minus(long2).abs());
  }

  @Property(tries = 200)
  void snappingLandsOnTheNextMultipleEachWay(
      @ForAll @LongRange(min = -20_000_000_000L, max = 20_000_000_000L) long nanometres,
      @ForAll @LongRange(min = 1, max = 100_000_000) long increment) {
    Length length = new Length(nanometres);
    Length step = new Length(increment);
    Length down = length.snappedDown(step);
    Length up = length.snappedUp(step);

    assertTrue(down.isMultipleOf(step) && up.isMultipleOf(step));
    assertTrue(!down.isMoreThan(length) && !up.isLessThan(length));
    assertEquals(length.isMultipleOf(step) ? Length.ZERO : step, up.minus(down));
  }

  @Property(tries = 200)
  void sharesNeverAddUpToMoreThanTheWhole(
      @ForAll @LongRange(min = 0, max = 20_000_000_000L) long nanometres,
      @ForAll @IntRange(min = 1, max = 200) int shares) {
    Length whole = new Length(nanometres);
    Length rest = whole.minus(whole.dividedBy(shares).times(shares));

    assertTrue(!rest.isNegative() && rest.nanometres() < shares);
  }

  @Property(tries = 200)
  void whatIsAddedCanBeTakenAway(
      @ForAll @LongRange(min = -20_000_000_000L, max = 20_000_000_000L) long one,
      @ForAll @LongRange(min = -20_000_000_000L, max = 20_000_000_000L) long other) {
    assertEquals(new Length(one), new Length(one).plus(new Length(other)).minus(new Length(other)));
  }
}
