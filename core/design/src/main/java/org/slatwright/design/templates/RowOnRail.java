package org.slatwright.design.templates;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;

/**
 * A row of slats where it lies on a rail, seen from above, from the rail's front left corner.
 *
 * @param slats where each of them lies on the rail, from the front back
 * @param nails in the order they are driven, from the front back
 * @param dowels of the rail, inside it
 */
record RowOnRail(
    Length railWidth,
    Length railLength,
    List<Extent> slats,
    List<Nail> nails,
    List<Extent> dowels) {

  RowOnRail {
    slats = List.copyOf(slats);
    nails = List.copyOf(nails);
    dowels = List.copyOf(dowels);
  }

  /** A brad or screw. */
  record Nail(Point2 centre, Length diameter) {}

  /** Of slats that lie beside one another and cross the rail. */
  static RowOnRail of(Assembly assembly, Piece rail, List<Piece> slats) {
    Box bearer = rail.box();
    return new RowOnRail(
        bearer.high().x().minus(bearer.low().x()),
        bearer.high().y().minus(bearer.low().y()),
        slats.stream().map(slat -> shared(slat.box(), bearer)).toList(),
        assembly.fasteners().stream()
            .filter(fastener -> fastener.into().equals(rail) && slats.contains(fastener.through()))
            .map(fastener -> nail(fastener, bearer))
            .toList(),
        dowels(assembly, rail).map(dowel -> shared(dowel.box(), bearer)).distinct().toList());
  }

  private static Nail nail(Fastener fastener, Box bearer) {
    return new Nail(onRail(fastener.head(), bearer), fastener.diameter());
  }

  private static Stream<Piece> dowels(Assembly assembly, Piece rail) {
    return assembly.joints().stream()
        .filter(joint -> joint.rail().equals(rail))
        .flatMap(joint -> joint.pins().stream())
        .map(Joint.Pin::dowel);
  }

  /** What two boxes have in common, seen from above. */
  private static Extent shared(Box box, Box bearer) {
    return new Extent(
        onRail(
            new Point3(
                Length.max(box.low().x(), bearer.low().x()),
                Length.max(box.low().y(), bearer.low().y()),
                bearer.high().z()),
            bearer),
        onRail(
            new Point3(
                Length.min(box.high().x(), bearer.high().x()),
                Length.min(box.high().y(), bearer.high().y()),
                bearer.high().z()),
            bearer));
  }

  private static Point2 onRail(Point3 point, Box bearer) {
    return new Point2(point.x().minus(bearer.low().x()), point.y().minus(bearer.low().y()));
  }
}
