package org.slatwright.design.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;

/**
 * A distance that the maker measures, in mm: told to the millimetre, below ten to a tenth; or to
 * the sixteenth of an inch, then to the 64th. Taken to the nanometre first, so that what is
 * reckoned a hair under a half is rounded like the half that it is.
 */
record Measured(Unit unit) implements Measure {

  private static final double TENTH = 0.1;
  private static final int TENTHS_BELOW = 10;
  private static final Length SIXTEENTH = Length.inches(1, 16);
  private static final Length SIXTY_FOURTH = Length.inches(1, 64);

  @Override
  public String told(double mm, int finer) {
    if (finer == 0 && isNoise(mm)) {
      return "under " + unit.metricOrInch("0.1 mm", "1/16\"");
    }
    double exact = Length.roundedMm(mm).inMm();
    return unit == Unit.MM ? millimetres(exact, finer) : inches(exact, finer);
  }

  @Override
  public boolean isNoise(double mm) {
    return mm > 0 && mm < unit.metricOrInch(TENTH, SIXTEENTH.inMm());
  }

  private String millimetres(double mm, int finer) {
    int decimals = finer > 0 ? finer : mm < TENTHS_BELOW ? 1 : 0;
    return shown(Length.roundedMm(decimal(mm, decimals).doubleValue()));
  }

  private String inches(double mm, int finer) {
    if (finer > 1) {
      double inches = mm / Length.inches(1, 1).inMm();
      return decimal(inches, finer + 1).stripTrailingZeros().toPlainString() + "\"";
    }
    Length step = finer == 0 ? SIXTEENTH : SIXTY_FOURTH;
    return shown(Length.roundedMm(mm).plus(step.half()).snappedDown(step));
  }

  private String shown(Length length) {
    return new LengthFormat(unit).withUnit(length);
  }

  private static BigDecimal decimal(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }
}
