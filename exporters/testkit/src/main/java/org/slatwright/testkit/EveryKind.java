package org.slatwright.testkit;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Area;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Grain;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Material;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;
import org.slatwright.api.model.Solid;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Plate;
import org.slatwright.api.plan.Quantities;

/**
 * One upright, one rail, the dowel between them and two slats, made by hand: small enough to
 * follow, and with one of everything that a plan can hold.
 */
final class EveryKind {

  private static final String SPRUCE = "norway spruce";
  private static final Length WIDTH = Length.mm(44);
  private static final Length DIAMETER = Length.mm(10);
  private static final Length HEIGHT = Length.mm(300);
  private static final Length REACH = Length.mm(120);
  private static final Length EMBEDMENT = Length.mm(35);

  private EveryKind() {}

  static Plan plan(String title) {
    Assembly assembly = assembly();
    Plate plate = plate();
    return new Plan(
        title,
        new LengthFormat(Unit.MM),
        List.of(depthChain()),
        fits(),
        assembly,
        assembly.parts().stream().map(EveryKind::cutLine).toList(),
        EveryKindCutting.plan(assembly.parts()),
        quantities(assembly),
        SampleWork.of(HEIGHT, REACH),
        Optional.of(jig(plate)),
        List.of(pattern(plate)),
        List.of(wedge()),
        findings(),
        List.of(
            sheet(title, Paper.A4, "drawings/01-first"),
            sheet(title, Paper.LETTER, "drawings/02-second")),
        EveryKindTemplates.templates());
  }

  private static Assembly assembly() {
    Hole through = new Hole("a", Face.BACK, Length.mm(122), WIDTH.half(), DIAMETER, WIDTH, true);
    Hole blind =
        new Hole("a", Face.START_END, WIDTH.half(), WIDTH.half(), DIAMETER, Length.mm(37), false);
    Part uprightPart =
        part("U", Role.UPRIGHT, new Shape.Bar(HEIGHT, WIDTH, WIDTH), Stock.FRAME, List.of(through));
    Part railPart =
        part("R", Role.RAIL, new Shape.Bar(REACH, WIDTH, WIDTH), Stock.FRAME, List.of(blind));
    Part dowelPart =
        part(
            "D",
            Role.DOWEL,
            new Shape.Rod(WIDTH.plus(EMBEDMENT), DIAMETER),
            Stock.DOWEL_ROD,
            List.of());
    Part front = slat("S1", Length.mm(40));
    Part back = slat("S2", Length.mm(60));
    Piece upright =
        piece(
            uprightPart, Length.ZERO, Length.ZERO, Length.ZERO, Direction.PLUS_Z, Direction.PLUS_X);
    Piece rail =
        piece(railPart, Length.ZERO, WIDTH, Length.mm(100), Direction.PLUS_Y, Direction.PLUS_Z);
    Piece dowel =
        piece(
            dowelPart,
            Length.mm(17),
            Length.ZERO,
            Length.mm(117),
            Direction.PLUS_Y,
            Direction.PLUS_Z);
    Length top = Length.mm(100).plus(WIDTH);
    List<Piece> slats =
        List.of(
            piece(front, Length.ZERO, Length.mm(49), top, Direction.PLUS_X, Direction.PLUS_Y),
            piece(back, Length.ZERO, Length.mm(99), top, Direction.PLUS_X, Direction.PLUS_Y));
    Fastener brad =
        new Fastener(
            Fastener.Kind.BRAD,
            Length.mm(40),
            Length.roundedMm(1.2),
            new Point3(Length.mm(22), Length.mm(60), Length.mm(144)),
            Direction.MINUS_Z,
            rail,
            upright);
    return new Assembly(
        List.of(uprightPart, railPart, dowelPart, front, back),
        List.of(upright, rail, dowel, slats.get(0), slats.get(1)),
        List.of(
            new Group("frame-1", Group.Kind.FRAME, List.of(upright, rail, dowel)),
            new Group("shelf-1", Group.Kind.SHELF, slats)),
        List.of(new Joint("J-1", upright, rail, List.of(new Joint.Pin(dowel, through, blind)))),
        List.of(brad));
  }

  private static Part slat(String mark, Length width) {
    Shape shape = new Shape.Bar(Length.mm(100), width, Length.mm(16));
    return part(mark, Role.SLAT, shape, Stock.SLAT, List.of());
  }

  private static Part part(String mark, Role role, Shape shape, Stock stock, List<Hole> holes) {
    return new Part(
        mark, role.word(), role, shape, new Material(stock, SPRUCE), Grain.ALONG_LENGTH, holes, 1);
  }

  private static Piece piece(
      Part part, Length x, Length y, Length z, Direction length, Direction width) {
    return new Piece(part.mark() + "-1", part, new Placement(new Point3(x, y, z), length, width));
  }

  private static Chain depthChain() {
    return new Chain(
        "depth",
        List.of(new Chain.Link("upright", WIDTH, false), new Chain.Link("rail", REACH, true)),
        WIDTH.plus(REACH));
  }

  private static CutLine cutLine(Part part) {
    return new CutLine(part, SPRUCE + ", " + part.material().stock().word(), "cut, then \"drill\"");
  }

  private static List<Fit> fits() {
    return List.of(
        new Fit(
            "jar, \"tall\"",
            1,
            true,
            3,
            2,
            Optional.of(1),
            Length.mm(12),
            Length.mm(4),
            Optional.of(Length.mm(30)),
            true),
        new Fit(
            "jar, \"tall\"",
            2,
            false,
            0,
            2,
            Optional.empty(),
            Length.mm(-15),
            Length.mm(4),
            Optional.empty(),
            false));
  }

  private static Quantities quantities(Assembly assembly) {
    return new Quantities(
        new Mass(1234),
        new Point3(Length.mm(22), Length.mm(40), Length.mm(110)),
        assembly.parts().stream()
            .map(part -> new Quantities.PartMass(part, new Mass(400)))
            .toList(),
        new Area(98_765),
        new Mass(3),
        1,
        WIDTH.plus(EMBEDMENT),
        1);
  }

  private static List<Finding> findings() {
    return List.of(
        new Finding(
            Finding.Severity.ERROR,
            "rail-length",
            "rail R",
            "too short",
            "100 mm",
            "at least 125 mm",
            "cut it 125 mm long",
            "a table"),
        new Finding(Finding.Severity.WARNING, "alone", "upright U", "stands alone", "", "", "", ""),
        new Finding(
            Finding.Severity.NOTE,
            "words",
            "timber.frame",
            "a note; with, commas",
            "",
            "",
            "",
            ""));
  }

  private static Plate plate() {
    Outline.Path boundary = rounded(Length.mm(60), Length.mm(40), Length.mm(5));
    Outline slot = new Outline.Circle(new Point2(Length.mm(15), Length.mm(20)), Length.mm(8));
    Outline.Circle bore = new Outline.Circle(new Point2(Length.mm(45), Length.mm(20)), DIAMETER);
    return new Plate("J1", "guide plate", 2, Length.mm(6), boundary, List.of(slot), List.of(bore));
  }

  /** A rectangle whose corners are arcs, from the lower left straight on and round to the left. */
  private static Outline.Path rounded(Length width, Length height, Length radius) {
    Length right = width.minus(radius);
    Length top = height.minus(radius);
    return new Outline.Path(
        List.of(
            line(radius, Length.ZERO, right, Length.ZERO),
            arc(right, Length.ZERO, width, radius, right, radius),
            line(width, radius, width, top),
            arc(width, top, right, height, right, top),
            line(right, height, radius, height),
            arc(radius, height, Length.ZERO, top, radius, top),
            line(Length.ZERO, top, Length.ZERO, radius),
            arc(Length.ZERO, radius, radius, Length.ZERO, radius, radius)));
  }

  private static Outline.Edge line(Length x1, Length y1, Length x2, Length y2) {
    return new Outline.Line(new Point2(x1, y1), new Point2(x2, y2));
  }

  private static Outline.Edge arc(
      Length x1, Length y1, Length x2, Length y2, Length centreX, Length centreY) {
    return new Outline.Arc(
        new Point2(x1, y1), new Point2(x2, y2), new Point2(centreX, centreY), true);
  }

  private static Jig jig(Plate plate) {
    Placement flat = new Placement(Point3.ORIGIN, Direction.PLUS_X, Direction.PLUS_Z);
    return new Jig(
        List.of(plate),
        List.of(new Jig.Placed(plate, flat)),
        DIAMETER,
        Length.mm(25),
        List.of(WIDTH.half()),
        Length.roundedMm(0.2),
        List.of("Clamp it on.", "Drill."));
  }

  private static Pattern pattern(Plate plate) {
    return new Pattern(
        "jig/J1-guide-plate",
        "J1 guide plate",
        List.of(
            new Pattern.Feature(
                Pattern.Operation.DRILL, plate.bores().get(0), Optional.of(Length.mm(4))),
            new Pattern.Feature(
                Pattern.Operation.CUT_INSIDE, plate.openings().get(0), Optional.empty()),
            new Pattern.Feature(Pattern.Operation.CUT_OUTSIDE, plate.boundary(), Optional.empty()),
            new Pattern.Feature(
                Pattern.Operation.REFERENCE,
                rounded(Length.mm(50), Length.mm(30), Length.mm(3)),
                Optional.empty())),
        List.of(
            new Pattern.Label(new Point2(Length.mm(5), Length.mm(5)), Length.mm(4), "J1 <guide>")),
        List.of(
            new Pattern.Stroke(
                List.of(
                    new Point2(Length.mm(8), Length.mm(4)),
                    new Point2(Length.mm(10), Length.mm(8)),
                    new Point2(Length.mm(12), Length.mm(4))))));
  }

  /** The corner of a block. */
  private static Solid wedge() {
    Length along = Length.mm(30);
    Length up = Length.mm(12);
    return new Solid(
        "jig/wedge",
        "wedge <of> the jig",
        List.of(
            new Point3(Length.ZERO, Length.ZERO, Length.ZERO),
            new Point3(along, Length.ZERO, Length.ZERO),
            new Point3(Length.ZERO, up, Length.ZERO),
            new Point3(Length.ZERO, Length.ZERO, up)),
        List.of(
            new Solid.Triangle(0, 2, 1),
            new Solid.Triangle(0, 1, 3),
            new Solid.Triangle(0, 3, 2),
            new Solid.Triangle(1, 2, 3)));
  }

  private static Sheet sheet(String title, Paper paper, String name) {
    View drawn = new View("front", "Front view", Optional.of(new Scale(1, 10)), figures(title));
    View table = new View("notes", "Notes", Optional.empty(), List.of());
    return new Sheet(name, "Every figure", paper, true, List.of(drawn, table));
  }

  private static List<Figure> figures(String anyTitle) {
    String title = anyTitle.replaceAll("\\s", " ");
    PaperPoint origin = new PaperPoint(20, 20);
    Figure edge = Figure.Polyline.line(origin, origin.moved(50, 0), LineKind.THIN);
    Figure arrow =
        new Figure.Fill(List.of(origin, origin.moved(3, 1), origin.moved(3, -1)), Figure.Shade.INK);
    Figure value =
        new Figure.Text(origin.moved(25, 1), 2.5, "4 3/8\" × ½ ⌀", Figure.Align.MIDDLE, 90);
    return List.of(
        new Figure.Fill(
            List.of(origin, origin.moved(50, 0), origin.moved(50, 40)), Figure.Shade.TINT),
        new Figure.Fill(
            List.of(origin, origin.moved(5, 0), origin.moved(5, 4)), Figure.Shade.PAPER),
        new Figure.Polyline(
            List.of(origin, origin.moved(50, 0), origin.moved(50, 40)), true, LineKind.VISIBLE),
        Figure.Polyline.line(origin, origin.moved(0, 9), LineKind.HIDDEN),
        Figure.Polyline.line(origin, origin.moved(9, 9), LineKind.BORDER),
        new Figure.Circle(origin.moved(25, 20), 5, LineKind.CENTRE),
        new Figure.Arc(origin.moved(25, 20), 8, 350, 200, LineKind.NEIGHBOUR),
        new Figure.Arc(origin.moved(25, 20), 9, 10, -90, LineKind.VISIBLE),
        new Figure.Dimension(Length.mm(500), "500", List.of(edge, arrow, value)),
        new Figure.Cluster(
            "U-1",
            "upright U-1",
            List.of(new Figure.Cluster("U-1-edge", "edge of " + title, List.of(edge)))),
        new Figure.Text(origin.moved(0, 60), 3.5, title, Figure.Align.START, 0),
        new Figure.Text(origin.moved(60, 60), 3.5, "end", Figure.Align.END, 0));
  }
}
