package org.slatwright.design.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.export.OutputNames;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Grain;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Material;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Pattern.Operation;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Outlines;
import org.slatwright.design.outline.Polygons;
import org.slatwright.design.sizing.Rack;

/** What the patterns promise whoever cuts or drills by them. */
class PatternsTest {

  private static final LengthFormat MM = new LengthFormat(Unit.MM);
  private static final Rack.Shop SHOP =
      new Rack.Shop(
          Optional.empty(),
          new Rack.JigSheet(Length.mm(6), Length.mm(600), Length.mm(400)),
          Optional.empty(),
          Optional.empty(),
          Paper.A4,
          Length.mm(6));

  @Example
  void aRailShowsBothItsEndsWithTheirDepths() {
    List<Pattern> patterns = patterns(rail(), MM);
    assertEquals(List.of("parts/R-rail"), patterns.stream().map(Pattern::name).toList());
    Pattern pattern = patterns.get(0);
    assertEquals(
        List.of(Operation.DRILL, Operation.REFERENCE, Operation.DRILL, Operation.REFERENCE),
        pattern.features().stream().map(Pattern.Feature::operation).toList());
    assertEquals(Optional.of(Length.mm(37)), pattern.features().get(0).depth());
    assertEquals(
        List.of(
            "R rail, 8 pieces",
            "start end: face edge left, face side below",
            "a: diameter 10 mm, 37 mm deep",
            "R rail, 8 pieces",
            "far end: face edge left, back below",
            "b: diameter 10 mm, 37 mm deep"),
        pattern.labels().stream().map(Pattern.Label::text).toList());
  }

  @Example
  void aThroughHoleHasNoDepthAndHolesDrilledAlikeShareALine() {
    Part upright =
        part(
            "U",
            "upright",
            new Shape.Bar(Length.mm(1500), Length.mm(44), Length.mm(44)),
            List.of(
                hole("a", Face.FACE_SIDE, 122, 22, true),
                hole("b", Face.FACE_SIDE, 484, 22, true)));
    Pattern pattern = patterns(upright, MM).get(0);
    assertEquals(Optional.empty(), pattern.features().get(0).depth());
    assertEquals("a, b: diameter 10 mm, through", pattern.labels().get(2).text());
    assertEquals(
        new Outline.Circle(new Point2(Length.mm(122), Length.mm(22)), Length.mm(10)),
        pattern.features().get(0).outline());
  }

  @Example
  void anInchPlanIsLabelledInInches() {
    String label = patterns(rail(), new LengthFormat(Unit.INCH)).get(0).labels().get(2).text();
    assertEquals("a: diameter 0.3937\", 1.4567\" deep", label);
  }

  @Example
  void aPartWithoutHolesHasNoPattern() {
    Part slat =
        part("S", "slat", new Shape.Bar(Length.mm(668), Length.mm(95), Length.mm(18)), List.of());
    assertEquals(List.of(), patterns(slat, MM));
  }

  @Example
  void aPlateIsBoredThenOpenedThenCutFree() {
    Outline.Path boundary = Outlines.roundedRectangle(Length.mm(60), Length.mm(40), Length.mm(3));
    Outline slot =
        Outlines.rectangle(new Point2(Length.mm(6), Length.mm(6)), Length.mm(6), Length.mm(12));
    Outline.Circle bore =
        new Outline.Circle(new Point2(Length.mm(30), Length.mm(12)), Length.mm(10));
    Plate plate =
        new Plate("J1", "guide plate", 5, Length.mm(6), boundary, List.of(slot), List.of(bore));
    Jig jig =
        new Jig(
            List.of(plate), List.of(), Length.ZERO, Length.ZERO, List.of(), Length.ZERO, List.of());
    Pattern pattern =
        Patterns.of(SHOP, Unit.MM, assembly(rail()), Optional.of(jig)).patterns().get(0);
    assertEquals("jig/J1-guide-plate", pattern.name());
    assertEquals(
        List.of(
            new Pattern.Feature(Operation.DRILL, bore, Optional.empty()),
            new Pattern.Feature(Operation.CUT_INSIDE, slot, Optional.empty()),
            new Pattern.Feature(Operation.CUT_OUTSIDE, boundary, Optional.empty())),
        pattern.features());
    assertEquals(
        List.of("J1 guide plate", "5 from 6 mm sheet", "nominal size, no cutter compensation"),
        pattern.labels().stream().map(Pattern.Label::text).toList());
  }

  @Property(tries = 60)
  void everythingLiesAboveTheOriginAndNoLabelCoversWhatIsDrilled(@ForAll("parts") Part part) {
    for (Pattern pattern : patterns(part, MM)) {
      new OutputNames().claim(pattern.name());
      pattern.features().forEach(PatternsTest::liesAboveTheOrigin);
      for (Pattern.Label label : pattern.labels()) {
        assertTrue(label.text().matches("[ -~]+"), label.text());
        assertFalse(label.at().x().isNegative() || label.at().y().isNegative());
        pattern.features().forEach(feature -> clear(label, feature));
      }
    }
  }

  private static void liesAboveTheOrigin(Pattern.Feature feature) {
    Point2 low = Extent.of(feature.outline()).low();
    assertFalse(low.x().isNegative() || low.y().isNegative(), low.toString());
  }

  /** A descender hangs a third of a capital's height below the baseline, at most. */
  private static void clear(Pattern.Label label, Pattern.Feature feature) {
    double height = label.height().inMm();
    double x = label.at().x().inMm();
    double y = label.at().y().inMm();
    Envelope text =
        new Envelope(x, x + Lettering.width(label.text(), height), y - height / 3, y + height);
    assertFalse(
        new GeometryFactory().toGeometry(text).intersects(Polygons.of(feature.outline())),
        label.text());
  }

  /** As seen from outside: x × y points out of the face, against the drill. */
  @Property(tries = 60)
  void noFaceIsDrawnMirrored(@ForAll Face face) {
    Shape shape = new Shape.Bar(Length.mm(90), Length.mm(50), Length.mm(40));
    List<Hole> holes =
        List.of(
            hole("a", face, 10, 15, false),
            hole("b", face, 30, 15, false),
            hole("c", face, 10, 25, false));
    Part part = part("P", "part", shape, holes);
    Placement asModelled = new Placement(Point3.ORIGIN, Direction.PLUS_X, Direction.PLUS_Y);
    Piece piece = new Piece("P-1", part, asModelled);
    List<Bore> bores = holes.stream().map(piece::bore).toList();
    List<Point2> drawn = centres(patterns(part, MM).get(0));

    Coordinate alongInSpace = difference(bores.get(1).mouth(), bores.get(0).mouth());
    Coordinate acrossInSpace = difference(bores.get(2).mouth(), bores.get(0).mouth());
    assertEquals(drawn.get(0).y(), drawn.get(1).y());
    assertEquals(drawn.get(0).x(), drawn.get(2).x());
    double right = drawn.get(1).x().minus(drawn.get(0).x()).inMm() / 20;
    double up = drawn.get(2).y().minus(drawn.get(0).y()).inMm() / 10;
    Coordinate out = cross(alongInSpace, acrossInSpace, right * up);
    Direction inward = bores.get(0).inward();
    assertEquals(-inward.sign(), Math.signum(out.getOrdinate(inward.axis().ordinal())));
  }

  private static List<Point2> centres(Pattern pattern) {
    return pattern.features().stream()
        .filter(feature -> feature.operation() == Operation.DRILL)
        .map(feature -> ((Outline.Circle) feature.outline()).centre())
        .toList();
  }

  private static Coordinate difference(Point3 to, Point3 from) {
    return new Coordinate(
        to.x().minus(from.x()).inMm(),
        to.y().minus(from.y()).inMm(),
        to.z().minus(from.z()).inMm());
  }

  private static Coordinate cross(Coordinate a, Coordinate b, double sense) {
    return new Coordinate(
        sense * (a.y * b.z - a.z * b.y),
        sense * (a.z * b.x - a.x * b.z),
        sense * (a.x * b.y - a.y * b.x));
  }

  @Provide
  Arbitrary<Part> parts() {
    Arbitrary<Integer> length = Arbitraries.integers().between(60, 2000);
    Arbitrary<Integer> side = Arbitraries.integers().between(20, 90);
    Arbitrary<List<Face>> faces = Arbitraries.of(Face.values()).list().ofMinSize(1).ofMaxSize(8);
    return Combinators.combine(length, side, side, faces)
        .as(
            (l, w, t, drilled) -> {
              Shape shape = new Shape.Bar(Length.mm(l), Length.mm(w), Length.mm(t));
              return part("P", "Long part no. 2", shape, holesOn(drilled));
            });
  }

  private static List<Hole> holesOn(List<Face> faces) {
    return Stream.iterate(0, i -> i < faces.size(), i -> i + 1)
        .map(i -> hole("h" + i, faces.get(i), 10, 10, i % 2 == 0))
        .toList();
  }

  private static Part rail() {
    return part(
        "R",
        "rail",
        new Shape.Bar(Length.mm(320), Length.mm(44), Length.mm(44)),
        List.of(hole("a", Face.START_END, 22, 22, false), hole("b", Face.FAR_END, 22, 22, false)));
  }

  private static Hole hole(String name, Face face, long along, long across, boolean through) {
    return new Hole(
        name, face, Length.mm(along), Length.mm(across), Length.mm(10), Length.mm(37), through);
  }

  private static Part part(String mark, String name, Shape shape, List<Hole> holes) {
    return new Part(
        mark,
        name,
        Role.RAIL,
        shape,
        new Material(Stock.FRAME, "norway spruce"),
        Grain.ALONG_LENGTH,
        holes,
        8);
  }

  private static List<Pattern> patterns(Part part, LengthFormat lengths) {
    return Patterns.of(SHOP, lengths.unit(), assembly(part), Optional.empty()).patterns();
  }

  private static Assembly assembly(Part part) {
    Placement placement = new Placement(Point3.ORIGIN, Direction.PLUS_X, Direction.PLUS_Y);
    Piece piece = new Piece(part.mark() + "-1", part, placement);
    return new Assembly(List.of(part), List.of(piece), List.of(), List.of(), List.of());
  }
}
