package org.slatwright.design.takeoff;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Shape;
import org.slatwright.design.mechanics.PointMass;

/** Weighs parts and pieces: their solid, with every hole taken off. */
record Scales(Densities densities) {

  /** One piece of a part, in kg. */
  double kg(Part part) {
    double holes = part.holes().stream().mapToDouble(Scales::volume).sum();
    return densities.of(part.material().stock()) * (volume(part.shape()) - holes);
  }

  PointMass weigh(Assembly assembly) {
    return assembly.pieces().stream().map(this::weigh).reduce(PointMass.NONE, PointMass::plus);
  }

  PointMass weigh(Piece piece) {
    double density = densities.of(piece.part().material().stock());
    Box box = piece.box();
    PointMass solid =
        new PointMass(
            density * volume(piece.part().shape()),
            middle(box.low().x(), box.high().x()),
            middle(box.low().y(), box.high().y()),
            middle(box.low().z(), box.high().z()));
    return piece.part().holes().stream()
        .map(hole -> missing(density, piece.bore(hole)))
        .reduce(solid, PointMass::plus);
  }

  private static PointMass missing(double density, Bore bore) {
    Point3 end = bore.mouth().moved(bore.inward(), bore.depth());
    return new PointMass(
        -density * cylinder(bore.diameter(), bore.depth()),
        middle(bore.mouth().x(), end.x()),
        middle(bore.mouth().y(), end.y()),
        middle(bore.mouth().z(), end.z()));
  }

  private static double volume(Shape shape) {
    return shape instanceof Shape.Rod rod
        ? cylinder(rod.diameter(), rod.length())
        : shape.length().inMm() * shape.width().inMm() * shape.thickness().inMm();
  }

  private static double volume(Hole hole) {
    return cylinder(hole.diameter(), hole.depth());
  }

  private static double cylinder(Length diameter, Length length) {
    double radius = diameter.inMm() / 2;
    return Math.PI * radius * radius * length.inMm();
  }

  private static double middle(Length from, Length to) {
    return (from.inMm() + to.inMm()) / 2;
  }
}
