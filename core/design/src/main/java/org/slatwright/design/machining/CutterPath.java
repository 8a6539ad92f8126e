package org.slatwright.design.machining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Pattern.Operation;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.InsideCorners;
import org.slatwright.design.outline.Offset;
import org.slatwright.design.outline.Side;
import org.slatwright.design.sizing.Rack.Cutter;

/** The way that the middle of a cutter takes through the sheet, to leave a plate of its size. */
record CutterPath(Cutter cutter) {

  /** By which a relieved corner is rounder than the bit, so that the bit turns and never dwells. */
  private static final int RELIEF_TENTHS = 11;

  /** In the order of work: holes, then openings, then the edge. */
  List<Pattern.Feature> of(Plate plate) {
    Stream<Pattern.Feature> bores = plate.bores().stream().map(this::bore);
    Stream<Pattern.Feature> openings =
        plate.openings().stream().flatMap(opening -> along(opening, Side.INSIDE));
    return Stream.of(bores, openings, along(plate.boundary(), Side.OUTSIDE))
        .flatMap(features -> features)
        .toList();
  }

  /** The outline that is left when the corners are relieved, where the maker asks for it. */
  Outline.Path wanted(Outline.Path outline, Side side) {
    return isRelieved()
        ? InsideCorners.relieved(outline, side, cutter.offset().times(RELIEF_TENTHS).dividedBy(10))
        : outline;
  }

  boolean isRelieved() {
    return cutter instanceof Cutter.Router router && router.relieved();
  }

  /** What fits no cutter is drilled. */
  private Pattern.Feature bore(Outline.Circle bore) {
    return inside(bore)
        .map(circle -> through(Operation.CUT_INSIDE, circle))
        .orElseGet(() -> through(Operation.DRILL, bore));
  }

  private Stream<Pattern.Feature> along(Outline outline, Side side) {
    if (outline instanceof Outline.Circle circle) {
      return inside(circle).stream().map(smaller -> through(Operation.CUT_INSIDE, smaller));
    }
    Operation operation = side == Side.INSIDE ? Operation.CUT_INSIDE : Operation.CUT_OUTSIDE;
    return Offset.beside(wanted((Outline.Path) outline, side), side, cutter.offset()).stream()
        .map(path -> through(operation, path));
  }

  private Optional<Outline> inside(Outline.Circle circle) {
    Length diameter = circle.diameter().minus(cutter.offset().times(2));
    return diameter.isPositive()
        ? Optional.of(new Outline.Circle(circle.centre(), diameter))
        : Optional.empty();
  }

  private static Pattern.Feature through(Operation operation, Outline outline) {
    return new Pattern.Feature(operation, outline, Optional.empty());
  }
}
