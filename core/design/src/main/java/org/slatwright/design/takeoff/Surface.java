package org.slatwright.design.takeoff;

import java.math.BigInteger;
import java.util.List;
import org.slatwright.api.measure.Area;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/**
 * What can be reached of the assembled rack, feet included: all faces of its bars but where two
 * touch. No two bars share room, so what touches one face never overlaps on it, and what each pair
 * hides adds up exactly, in square nanometres.
 *
 * <p>Dowels change nothing: outside, a flush end closes the mouth of its hole; inside, the rail
 * covers it.
 */
final class Surface {

  private static final BigInteger NM2_PER_MM2 = BigInteger.TEN.pow(12);

  private Surface() {}

  static Area of(Assembly assembly) {
    List<Box> bars =
        assembly.pieces().stream()
            .filter(piece -> piece.part().role() != Role.DOWEL)
            .map(Piece::box)
            .toList();
    BigInteger whole = bars.stream().map(Surface::faces).reduce(BigInteger.ZERO, BigInteger::add);
    return new Area(rounded(whole.subtract(hidden(bars).shiftLeft(1))));
  }

  private static BigInteger faces(Box box) {
    BigInteger half = BigInteger.ZERO;
    for (Axis axis : Axis.values()) {
      half = half.add(across(axis, box, box));
    }
    return half.shiftLeft(1);
  }

  /** On one side of every contact. */
  private static BigInteger hidden(List<Box> bars) {
    BigInteger area = BigInteger.ZERO;
    for (Axis axis : Axis.values()) {
      for (Box below : bars) {
        for (Box above : bars) {
          if (below.high().along(axis).equals(above.low().along(axis))) {
            area = area.add(across(axis, below, above));
          }
        }
      }
    }
    return area;
  }

  /** What two boxes have in common, seen along an axis. */
  private static BigInteger across(Axis axis, Box a, Box b) {
    BigInteger area = BigInteger.ONE;
    for (Axis other : Axis.values()) {
      if (other != axis) {
        area = area.multiply(BigInteger.valueOf(common(other, a, b).nanometres()));
      }
    }
    return area;
  }

  private static Length common(Axis axis, Box a, Box b) {
    Length from = Length.max(a.low().along(axis), b.low().along(axis));
    Length to = Length.min(a.high().along(axis), b.high().along(axis));
    return Length.max(Length.ZERO, to.minus(from));
  }

  private static long rounded(BigInteger squareNanometres) {
    return squareNanometres.add(NM2_PER_MM2.shiftRight(1)).divide(NM2_PER_MM2).longValueExact();
  }
}
