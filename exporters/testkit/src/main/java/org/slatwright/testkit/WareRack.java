package org.slatwright.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Templates;
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
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;

/**
 * A pottery's ware rack of one bay and one shelf, put together by hand: small enough to check every
 * number of an exporter's output by eye, and not dependent on how racks are designed.
 */
public final class WareRack {

  private static final String SPECIES = "norway spruce";

  private final Unit unit;
  private final Length stock;
  private final Length rail;
  private final Length interior;
  private final Length upright;
  private final Length foot;
  private final Length slatThickness;
  private final Length slatWidth;
  private final Length gap;
  private final Length margin;
  private final Length dowel;
  private final Length embedment;

  private final Part uprightPart;
  private final Part railPart;
  private final Part slatPart;
  private final Part dowelPart;

  private WareRack(Unit unit, Length... sizes) {
    this.unit = unit;
    stock = sizes[0];
    rail = sizes[1];
    interior = sizes[2];
    upright = sizes[3];
    foot = sizes[4];
    slatThickness = sizes[5];
    slatWidth = sizes[6];
    gap = sizes[7];
    dowel = sizes[8];
    embedment = sizes[9];
    margin = rail.minus(slatWidth.times(3)).minus(gap.times(2)).half();
    uprightPart = uprightPart();
    railPart = railPart();
    slatPart = part("S", Role.SLAT, bar(slatLength(), slatWidth, slatThickness), Stock.SLAT, 3);
    dowelPart =
        part("D", Role.DOWEL, new Shape.Rod(stock.plus(embedment), dowel), Stock.DOWEL_ROD, 4);
  }

  /** In millimetres: frames of 44 mm stock, 600 mm high. */
  public static Plan inMillimetres() {
    return new WareRack(
            Unit.MM,
            Length.mm(44),
            Length.mm(320),
            Length.mm(400),
            Length.mm(600),
            Length.mm(100),
            Length.mm(18),
            Length.mm(95),
            Length.mm(10),
            Length.mm(10),
            Length.mm(35))
        .plan();
  }

  /** In inches: frames of 1 3/4 in stock, 24 in high. */
  public static Plan inInches() {
    return new WareRack(
            Unit.INCH,
            Length.inches(7, 4),
            Length.inches(25, 2),
            Length.inches(16, 1),
            Length.inches(24, 1),
            Length.inches(4, 1),
            Length.inches(3, 4),
            Length.inches(7, 2),
            Length.inches(3, 8),
            Length.inches(3, 8),
            Length.inches(11, 8))
        .plan();
  }

  private Plan plan() {
    WareRackJig jig = new WareRackJig(stock, upright, uprightPart.holes().get(0));
    return new Plan(
        "Ware rack",
        new LengthFormat(unit),
        chains(),
        fits(),
        assembly(),
        cutList(),
        new WareRackCutting(unit, interior, cutList()).plan(),
        quantities(),
        SampleWork.of(upright, upright.plus(rail)),
        Optional.of(jig.jig()),
        jig.patterns(),
        List.of(),
        findings(),
        List.of(),
        Templates.NONE);
  }

  private Part uprightPart() {
    Hole hole =
        new Hole("a", Face.FACE_SIDE, foot.plus(stock.half()), stock.half(), dowel, stock, true);
    return part("U", Role.UPRIGHT, bar(upright, stock, stock), Stock.FRAME, 4, hole);
  }

  private Part railPart() {
    Length depth = embedment.plus(Length.mm(2));
    Length middle = stock.half();
    return part(
        "R",
        Role.RAIL,
        bar(rail, stock, stock),
        Stock.FRAME,
        2,
        new Hole("a", Face.START_END, middle, middle, dowel, depth, false),
        new Hole("b", Face.FAR_END, middle, middle, dowel, depth, false));
  }

  private static Part part(
      String mark, Role role, Shape shape, Stock stock, int quantity, Hole... holes) {
    Material material = new Material(stock, SPECIES);
    return new Part(
        mark, role.word(), role, shape, material, Grain.ALONG_LENGTH, List.of(holes), quantity);
  }

  private static Shape bar(Length length, Length width, Length thickness) {
    return new Shape.Bar(length, width, thickness);
  }

  private Length slatLength() {
    return interior.plus(stock.times(2));
  }

  private Length depth() {
    return rail.plus(stock.times(2));
  }

  private List<Chain> chains() {
    Chain.Link frame = new Chain.Link("frame", stock, false);
    Length top = upright.minus(foot).minus(stock).minus(slatThickness);
    return List.of(
        new Chain(
            "height",
            List.of(
                new Chain.Link("foot", foot, false),
                new Chain.Link("rail", stock, false),
                new Chain.Link("slat", slatThickness, false),
                new Chain.Link("top", top, true)),
            upright),
        new Chain(
            "width", List.of(frame, new Chain.Link("bay", interior, false), frame), slatLength()));
  }

  private Assembly assembly() {
    List<Group> frames = List.of(frame(1), frame(2));
    List<Piece> slats = Stream.of(1, 2, 3).map(this::slat).toList();
    List<Piece> built = frames.stream().flatMap(frame -> frame.pieces().stream()).toList();
    List<Part> parts = List.of(uprightPart, railPart, slatPart, dowelPart);
    List<Piece> pieces =
        parts.stream()
            .flatMap(
                part ->
                    Stream.concat(built.stream(), slats.stream())
                        .filter(piece -> piece.part().equals(part)))
            .toList();
    List<Group> groups =
        List.of(frames.get(0), frames.get(1), new Group("shelf-1", Group.Kind.SHELF, slats));
    return new Assembly(parts, pieces, groups, joints(frames), fasteners(frames, slats));
  }

  private Group frame(int number) {
    Length x = frameX(number);
    Length middleX = x.plus(stock.half());
    Length middleZ = foot.plus(stock.half());
    Length low = middleZ.minus(dowel.half());
    Length back = depth();
    int first = 2 * number - 1;
    return new Group(
        "frame-" + number,
        Group.Kind.FRAME,
        List.of(
            piece(
                uprightPart,
                first,
                new Point3(x.plus(stock), stock, Length.ZERO),
                Direction.PLUS_Z,
                Direction.MINUS_X),
            piece(
                uprightPart,
                first + 1,
                new Point3(x, back.minus(stock), Length.ZERO),
                Direction.PLUS_Z,
                Direction.PLUS_X),
            piece(railPart, number, new Point3(x, stock, foot), Direction.PLUS_Y, Direction.PLUS_Z),
            piece(
                dowelPart,
                first,
                new Point3(middleX.minus(dowel.half()), Length.ZERO, low),
                Direction.PLUS_Y,
                Direction.PLUS_Z),
            piece(
                dowelPart,
                first + 1,
                new Point3(middleX.plus(dowel.half()), back, low),
                Direction.MINUS_Y,
                Direction.PLUS_Z)));
  }

  private Length frameX(int number) {
    return interior.plus(stock).times(number - 1L);
  }

  private Piece slat(int number) {
    Length y = stock.plus(margin).plus(slatWidth.plus(gap).times(number - 1L));
    return piece(
        slatPart,
        number,
        new Point3(Length.ZERO, y, foot.plus(stock)),
        Direction.PLUS_X,
        Direction.PLUS_Y);
  }

  private static Piece piece(
      Part part, int number, Point3 corner, Direction length, Direction width) {
    return new Piece(part.mark() + "-" + number, part, new Placement(corner, length, width));
  }

  private List<Joint> joints(List<Group> frames) {
    List<Joint> joints = new ArrayList<>();
    for (Group frame : frames) {
      List<Piece> pieces = frame.pieces();
      for (int end = 0; end < 2; end++) {
        Joint.Pin pin =
            new Joint.Pin(
                pieces.get(3 + end), uprightPart.holes().get(0), railPart.holes().get(end));
        String id = "J-" + (joints.size() + 1);
        joints.add(new Joint(id, pieces.get(end), pieces.get(2), List.of(pin)));
      }
    }
    return joints;
  }

  private List<Fastener> fasteners(List<Group> frames, List<Piece> slats) {
    List<Fastener> fasteners = new ArrayList<>();
    for (Piece slat : slats) {
      for (int frame = 1; frame <= 2; frame++) {
        Point3 head =
            new Point3(
                frameX(frame).plus(stock.half()),
                slat.box().low().y().plus(slatWidth.half()),
                slat.box().high().z());
        fasteners.add(
            new Fastener(
                Fastener.Kind.BRAD,
                Length.mm(40),
                Length.roundedMm(1.2),
                head,
                Direction.MINUS_Z,
                slat,
                frames.get(frame - 1).pieces().get(2)));
      }
    }
    return fasteners;
  }

  private List<CutLine> cutList() {
    LengthFormat lengths = new LengthFormat(unit);
    String frame = SPECIES + ", frame stock " + lengths.section(stock, stock);
    String slat = SPECIES + ", slat stock " + lengths.section(slatThickness, slatWidth);
    return List.of(
        new CutLine(uprightPart, frame, "square both ends"),
        new CutLine(railPart, frame, "cut all with one stop, or the frame is not square"),
        new CutLine(slatPart, slat, ""),
        new CutLine(dowelPart, "dowel rod ø " + lengths.withUnit(dowel), ""));
  }

  private List<Fit> fits() {
    return List.of(
        new Fit(
            "ware board",
            1,
            false,
            1,
            2,
            Optional.empty(),
            interior.minus(rail),
            rail.minus(stock.times(6)),
            Optional.empty(),
            true));
  }

  /** Round figures, made up: a reader is to find them again, not to believe them. */
  private Quantities quantities() {
    return new Quantities(
        new Mass(6500),
        new Point3(slatLength().half(), depth().half(), foot.times(3)),
        List.of(
            new Quantities.PartMass(uprightPart, new Mass(480)),
            new Quantities.PartMass(railPart, new Mass(250)),
            new Quantities.PartMass(slatPart, new Mass(340)),
            new Quantities.PartMass(dowelPart, new Mass(5))),
        new Area(1_250_000),
        new Mass(12),
        4,
        dowelPart.shape().length().times(4),
        6);
  }

  private static List<Finding> findings() {
    return List.of(
        new Finding(
            Finding.Severity.WARNING,
            "tip-over",
            "rack",
            "narrow for its height: it may tip when pulled at the top",
            "34 N",
            "at least 89 N",
            "fasten it to the wall",
            ""),
        new Finding(
            Finding.Severity.NOTE,
            "slat-sag",
            "slat S",
            "sags under 15 kg a shelf",
            "0.4 mm",
            "at most 1.6 mm",
            "",
            "L/300"));
  }
}
