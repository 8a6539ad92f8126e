package org.slatwright.testkit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plate;

/**
 * The jig of the {@link WareRack} and what a machine cuts for it: rounded corners, a slot with
 * round ends and a hollow corner, so that an exporter meets arcs of either turn.
 */
final class WareRackJig {

  private static final Length SHEET = Length.mm(6);
  private static final Length CLEARANCE = Length.roundedMm(0.15);
  private static final Length CORNER = Length.mm(8);
  private static final Length MARGIN = Length.mm(20);
  private static final Length SLOT_LENGTH = Length.mm(24);
  private static final Length SLOT_WIDTH = Length.mm(6);
  private static final Length LETTERS = Length.mm(4);

  private final Length stock;
  private final Length upright;
  private final Hole hole;

  WareRackJig(Length stock, Length upright, Hole hole) {
    this.stock = stock;
    this.upright = upright;
    this.hole = hole;
  }

  Jig jig() {
    Placement guideAt =
        new Placement(
            new Point3(guideWidth().half().negated(), Length.ZERO, Length.ZERO),
            Direction.PLUS_X,
            Direction.PLUS_Z);
    Placement cheekAt =
        new Placement(
            new Point3(stock.half().plus(CLEARANCE), Length.ZERO, Length.ZERO),
            Direction.PLUS_Y,
            Direction.PLUS_Z);
    return new Jig(
        List.of(guide(), cheek()),
        List.of(new Jig.Placed(guide(), guideAt), new Jig.Placed(cheek(), cheekAt)),
        hole.diameter(),
        SHEET,
        List.of(stock.half()),
        CLEARANCE,
        List.of("Hold the guide plate against the outer face.", "Drill through the guide hole."));
  }

  List<Pattern> patterns() {
    return List.of(
        pattern("jig/J1-guide-plate", guide()), pattern("jig/J2-cheek", cheek()), holes());
  }

  private Plate guide() {
    Outline.Circle bore =
        new Outline.Circle(new Point2(guideWidth().half(), stock.half()), hole.diameter());
    return new Plate(
        "J1",
        "guide plate",
        1,
        SHEET,
        rounded(guideWidth(), guideHeight()),
        List.of(slot(new Point2(MARGIN, stock.plus(MARGIN)))),
        List.of(bore));
  }

  private Plate cheek() {
    Length side = stock.plus(MARGIN);
    return new Plate("J2", "cheek", 2, SHEET, hollow(side, stock), List.of(), List.of());
  }

  private Length guideWidth() {
    return stock.plus(MARGIN.times(2));
  }

  private Length guideHeight() {
    return stock.plus(MARGIN.times(2));
  }

  private static Pattern pattern(String name, Plate plate) {
    Stream<Pattern.Feature> inside =
        Stream.concat(
            plate.bores().stream().map(bore -> through(Pattern.Operation.DRILL, bore)),
            plate.openings().stream()
                .map(opening -> through(Pattern.Operation.CUT_INSIDE, opening)));
    List<Pattern.Feature> features =
        Stream.concat(inside, Stream.of(through(Pattern.Operation.CUT_OUTSIDE, plate.boundary())))
            .toList();
    Pattern.Label label =
        new Pattern.Label(
            new Point2(CORNER, CORNER), LETTERS, plate.mark() + " x " + plate.quantity());
    return new Pattern(
        name, plate.mark() + " " + plate.name(), features, List.of(label), List.of());
  }

  private Pattern holes() {
    Outline.Circle bore =
        new Outline.Circle(new Point2(hole.along(), hole.across()), hole.diameter());
    Pattern.Label label =
        new Pattern.Label(new Point2(CORNER, CORNER), LETTERS, "U face side, drill 20 deep first");
    return new Pattern(
        "parts/U-holes",
        "upright U, holes",
        List.of(
            new Pattern.Feature(Pattern.Operation.DRILL, bore, Optional.of(Length.mm(20))),
            through(Pattern.Operation.REFERENCE, rectangle(upright, stock))),
        List.of(label),
        List.of());
  }

  private static Pattern.Feature through(Pattern.Operation operation, Outline outline) {
    return new Pattern.Feature(operation, outline, Optional.empty());
  }

  private static Outline.Path rectangle(Length width, Length height) {
    Point2 right = new Point2(width, Length.ZERO);
    Point2 opposite = new Point2(width, height);
    Point2 top = new Point2(Length.ZERO, height);
    return new Outline.Path(
        List.of(
            new Outline.Line(Point2.ORIGIN, right),
            new Outline.Line(right, opposite),
            new Outline.Line(opposite, top),
            new Outline.Line(top, Point2.ORIGIN)));
  }

  private static Outline.Path rounded(Length width, Length height) {
    Length right = width.minus(CORNER);
    Length top = height.minus(CORNER);
    Length zero = Length.ZERO;
    return new Outline.Path(
        List.of(
            line(CORNER, zero, right, zero),
            arc(right, zero, width, CORNER, right, CORNER, true),
            line(width, CORNER, width, top),
            arc(width, top, right, height, right, top, true),
            line(right, height, CORNER, height),
            arc(CORNER, height, zero, top, CORNER, top, true),
            line(zero, top, zero, CORNER),
            arc(zero, CORNER, CORNER, zero, CORNER, CORNER, true)));
  }

  private static Outline.Path hollow(Length width, Length height) {
    Length right = width.minus(CORNER);
    Length top = height.minus(CORNER);
    Length zero = Length.ZERO;
    return new Outline.Path(
        List.of(
            line(zero, zero, width, zero),
            line(width, zero, width, top),
            arc(width, top, right, height, width, height, false),
            line(right, height, zero, height),
            line(zero, height, zero, zero)));
  }

  private static Outline.Path slot(Point2 corner) {
    Length radius = SLOT_WIDTH.half();
    Length far = SLOT_LENGTH.minus(radius);
    Length zero = Length.ZERO;
    return new Outline.Path(
            List.of(
                line(radius, zero, far, zero),
                arc(far, zero, far, SLOT_WIDTH, far, radius, true),
                line(far, SLOT_WIDTH, radius, SLOT_WIDTH),
                arc(radius, SLOT_WIDTH, radius, zero, radius, radius, true)))
        .moved(corner.x(), corner.y());
  }

  private static Outline.Line line(Length x1, Length y1, Length x2, Length y2) {
    return new Outline.Line(new Point2(x1, y1), new Point2(x2, y2));
  }

  private static Outline.Arc arc(
      Length x1, Length y1, Length x2, Length y2, Length x, Length y, boolean counterClockwise) {
    return new Outline.Arc(
        new Point2(x1, y1), new Point2(x2, y2), new Point2(x, y), counterClockwise);
  }
}
