package org.slatwright.design.framing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Grain;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Material;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;
import org.slatwright.api.model.Stock;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/**
 * The unique parts of a rack.
 *
 * <p>All uprights are one part: drilled through in the middle of their width, a left one is a right
 * one turned about, and the rear one faces backwards.
 *
 * @param slats one for each different length and section, the longest first, then the widest, then
 *     the thickest
 */
record PartSet(Part upright, Part rail, List<Part> slats, Part dowel) {

  /** Dowels are bought as turned hardwood; the rack file names no species for them. */
  private static final String DOWEL_TIMBER = "hardwood";

  private static final Comparator<Shape> LARGEST_FIRST =
      Comparator.comparing(Shape::length)
          .thenComparing(Shape::width)
          .thenComparing(Shape::thickness)
          .reversed();

  static PartSet of(Rack rack, Grid grid) {
    return new PartSet(upright(rack, grid), rail(rack, grid), slats(rack), dowel(rack));
  }

  List<Part> all() {
    return Stream.of(Stream.of(upright, rail), slats.stream(), Stream.of(dowel))
        .flatMap(parts -> parts)
        .toList();
  }

  /** The slat part of that length and section. */
  Part slat(Length length, ShelfRow.Slat slat) {
    Shape.Bar bar = bar(length, slat);
    return slats.stream().filter(part -> part.shape().equals(bar)).findFirst().orElseThrow();
  }

  private static Part upright(Rack rack, Grid grid) {
    Rack.Upright upright = rack.upright();
    Length fromFaceEdge = upright.width().half();
    List<Hole> holes = new ArrayList<>();
    grid.dowelHeights()
        .forEach(
            height ->
                holes.add(
                    new Hole(
                        holeName(holes.size()),
                        Face.FACE_SIDE,
                        height,
                        fromFaceEdge,
                        rack.joint().diameter(),
                        upright.depth(),
                        true)));
    return new Part(
        "U",
        "upright",
        Role.UPRIGHT,
        new Shape.Bar(upright.length(), upright.width(), upright.depth()),
        new Material(Stock.FRAME, rack.species()),
        Grain.ALONG_LENGTH,
        holes,
        2 * rack.frames());
  }

  private static Part rail(Rack rack, Grid grid) {
    Rack.Rail rail = rack.rail();
    List<Hole> holes = new ArrayList<>();
    for (Face end : List.of(Face.START_END, Face.FAR_END)) {
      for (Length height : rack.joint().heights()) {
        holes.add(
            new Hole(
                holeName(holes.size()),
                end,
                height,
                grid.railBackToAxis(end == Face.START_END),
                rack.joint().diameter(),
                rack.joint().holeDepth(),
                false));
      }
    }
    boolean frameStock =
        rail.width().equals(rack.upright().width()) && rail.height().equals(rack.upright().depth());
    return new Part(
        "R",
        "rail",
        Role.RAIL,
        new Shape.Bar(rail.length(), rail.height(), rail.width()),
        new Material(frameStock ? Stock.FRAME : Stock.RAIL, rack.species()),
        Grain.ALONG_LENGTH,
        holes,
        rack.frames() * rack.shelves());
  }

  private static List<Part> slats(Rack rack) {
    List<Shape> all = rack.rows().stream().flatMap(PartSet::bars).toList();
    List<Shape> different = all.stream().distinct().sorted(LARGEST_FIRST).toList();
    List<Part> parts = new ArrayList<>();
    for (Shape bar : different) {
      boolean alone = different.size() == 1;
      parts.add(
          new Part(
              alone ? "S" : "S" + (parts.size() + 1),
              "slat",
              Role.SLAT,
              bar,
              new Material(Stock.SLAT, rack.species()),
              Grain.ALONG_LENGTH,
              List.of(),
              Collections.frequency(all, bar)));
    }
    return List.copyOf(parts);
  }

  private static Stream<Shape> bars(ShelfRow row) {
    return row.slats().stream().map(slat -> bar(row.length(), slat));
  }

  private static Shape.Bar bar(Length length, ShelfRow.Slat slat) {
    return new Shape.Bar(length, slat.width(), slat.thickness());
  }

  private static Part dowel(Rack rack) {
    Rack.DowelJoint joint = rack.joint();
    return new Part(
        "D",
        "dowel",
        Role.DOWEL,
        new Shape.Rod(joint.length(), joint.diameter()),
        new Material(Stock.DOWEL_ROD, DOWEL_TIMBER),
        Grain.ALONG_LENGTH,
        List.of(),
        2 * rack.frames() * rack.shelves() * joint.heights().size());
  }

  /** a … z, then aa, ab, … as columns of a table are lettered. */
  private static String holeName(int index) {
    String last = String.valueOf((char) ('a' + index % 26));
    return index < 26 ? last : holeName(index / 26 - 1) + last;
  }
}
