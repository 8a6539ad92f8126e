package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;

/** What holds of the pieces of every rack. */
class AssemblyPropertyTest {

  @Property(tries = 40)
  void noTwoPiecesTakeTheSameRoomButADowelInItsJoint(@ForAll("racks") Framed rack) {
    Map<Piece, Joint> jointOfDowel = jointsByDowel(rack.assembly());
    List<Piece> pieces = rack.assembly().pieces();
    List<Box> boxes = pieces.stream().map(Piece::box).toList();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        if (boxes.get(i).overlaps(boxes.get(j))) {
          // dowels come last in the parts list
          Joint joint = jointOfDowel.get(pieces.get(j));
          Piece other = pieces.get(i);
          assertTrue(
              joint != null && (other.equals(joint.upright()) || other.equals(joint.rail())),
              pieces.get(i).id() + " and " + pieces.get(j).id());
        }
      }
    }
  }

  @Property(tries = 40)
  void theRackIsAsLargeAsItsChainsSay(@ForAll("racks") Framed rack) {
    Box extent = rack.assembly().extent();

    assertEquals(Point3.ORIGIN, extent.low());
    assertEquals(rack.total("width"), extent.size(Axis.X));
    assertEquals(rack.total("depth"), extent.size(Axis.Y));
    assertEquals(rack.total("height"), extent.size(Axis.Z));
  }

  @Property(tries = 40)
  void asManyPiecesArePlacedAsThePartsListCounts(@ForAll("racks") Framed rack) {
    Assembly assembly = rack.assembly();
    for (Part part : assembly.parts()) {
      assertEquals(part.quantity(), piecesOf(part, assembly).size(), part.mark());
    }
    assertEquals(
        assembly.parts().stream().mapToInt(Part::quantity).sum(), assembly.pieces().size());
    Rack asked = new Rack(rack);
    assertEquals(2 * asked.frames(), assembly.pieces(Role.UPRIGHT).size());
    assertEquals(asked.frames() * asked.shelves(), assembly.pieces(Role.RAIL).size());
    assertEquals(asked.slats(), assembly.pieces(Role.SLAT).size());
    assertEquals(asked.dowels(), assembly.pieces(Role.DOWEL).size());
    assertEquals(2 * asked.frames() * asked.shelves(), assembly.joints().size());
  }

  @Property(tries = 30)
  void piecesOfAPartAreNumberedFromOneInTheOrderOfTheList(@ForAll("racks") Framed rack) {
    Assembly assembly = rack.assembly();
    List<String> ids =
        assembly.parts().stream()
            .flatMap(
                part ->
                    IntStream.rangeClosed(1, part.quantity())
                        .mapToObj(number -> part.mark() + "-" + number))
            .toList();

    assertEquals(ids, assembly.pieces().stream().map(Piece::id).toList());
    assertEquals(ids.size(), new HashSet<>(ids).size(), "unique");
  }

  @Property(tries = 30)
  void marksAndGroupsAndJointsAreNamedOnce(@ForAll("racks") Framed rack) {
    Assembly assembly = rack.assembly();

    assertAllDifferent(assembly.parts().stream().map(Part::mark).toList());
    assertAllDifferent(assembly.groups().stream().map(Group::id).toList());
    assertAllDifferent(assembly.joints().stream().map(Joint::id).toList());
  }

  @Property(tries = 30)
  void everyPieceIsBuiltInExactlyOneFrameOrShelf(@ForAll("racks") Framed rack) {
    List<Piece> grouped =
        rack.assembly().groups().stream().flatMap(group -> group.pieces().stream()).toList();

    assertEquals(grouped.size(), new HashSet<>(grouped).size());
    assertEquals(new HashSet<>(rack.assembly().pieces()), new HashSet<>(grouped));
  }

  @Property(tries = 30)
  void framesGoFromTheLeftAndShelvesFromTheFloor(@ForAll("racks") Framed rack) {
    assertRising(rack.groups(Group.Kind.FRAME), Axis.X);
    assertRising(rack.groups(Group.Kind.SHELF), Axis.Z);
  }

  @Property(tries = 30)
  void everyUprightIsTheSamePart(@ForAll("racks") Framed rack) {
    Set<Part> different = new HashSet<>();
    rack.assembly().pieces(Role.UPRIGHT).forEach(piece -> different.add(piece.part()));

    assertEquals(1, different.size());
  }

  @Property(tries = 30)
  void noPieceIsMirrored(@ForAll("racks") Framed rack) {
    for (Piece piece : rack.assembly().pieces()) {
      Point3 origin = piece.placement().toRack(Point3.ORIGIN);
      long[] length = step(origin, piece, new Point3(NANOMETRE, Length.ZERO, Length.ZERO));
      long[] width = step(origin, piece, new Point3(Length.ZERO, NANOMETRE, Length.ZERO));
      long[] thickness = step(origin, piece, new Point3(Length.ZERO, Length.ZERO, NANOMETRE));
      assertEquals(1, determinant(length, width, thickness), piece.id());
    }
  }

  @Property(tries = 10)
  void theSameRackIsFramedTheSameWay(@ForAll("racks") Framed rack) {
    assertEquals(rack.assembly(), Framing.frame(rack.rack()));
  }

  @Provide
  Arbitrary<Framed> racks() {
    return Framed.any();
  }

  private static final Length NANOMETRE = new Length(1);

  private static Map<Piece, Joint> jointsByDowel(Assembly assembly) {
    Map<Piece, Joint> joints = new HashMap<>();
    assembly.joints().forEach(joint -> joint.pins().forEach(pin -> joints.put(pin.dowel(), joint)));
    return joints;
  }

  private static List<Piece> piecesOf(Part part, Assembly assembly) {
    return assembly.pieces().stream().filter(piece -> piece.part().equals(part)).toList();
  }

  private static void assertAllDifferent(List<String> names) {
    assertEquals(names.size(), new HashSet<>(names).size(), names.toString());
  }

  private static void assertRising(List<Group> groups, Axis axis) {
    for (int i = 1; i < groups.size(); i++) {
      Length before = groups.get(i - 1).pieces().get(0).box().low().along(axis);
      Length here = groups.get(i).pieces().get(0).box().low().along(axis);
      assertTrue(before.isLessThan(here), groups.get(i).id());
    }
  }

  private static long[] step(Point3 origin, Piece piece, Point3 own) {
    Point3 to = piece.placement().toRack(own);
    return new long[] {
      to.x().minus(origin.x()).nanometres(),
      to.y().minus(origin.y()).nanometres(),
      to.z().minus(origin.z()).nanometres()
    };
  }

  /** Of three columns: 1 for a turned body, -1 for a mirrored one. */
  private static long determinant(long[] a, long[] b, long[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        - a[1] * (b[0] * c[2] - b[2] * c[0])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }

  /** The counts that the maker would reckon by hand. */
  private record Rack(Framed framed) {

    int frames() {
      return framed.rack().bays() + 1;
    }

    int shelves() {
      return framed.rack().openings().size() + 1;
    }

    int slats() {
      return framed.rack().rows().stream().mapToInt(row -> row.slats().size()).sum();
    }

    int dowels() {
      return 2 * frames() * shelves() * framed.rack().joint().heights().size();
    }
  }
}
