package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.NoninvertibleTransformationException;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * A sheet that is cut by the path in its file, as ezdxf reads it.
 *
 * @param path of the middle of the cutter
 * @param width that the cutter takes, in mm
 */
record CutSheet(ReadByEzdxf path, double width) {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final int CHORDS_A_QUARTER = 32;
  private static final double EXACT = 1e-6;

  /**
   * What falls from the sheet.
   *
   * @param wood as it lies on the sheet, in mm
   * @param engraved what is engraved on it
   */
  record Piece(Polygon wood, Geometry engraved) {

    /**
     * The wood in the axes of a plate's own file, when it bears the mark that is engraved there:
     * the mark alone tells how the piece lay.
     */
    Optional<Polygon> as(ReadByEzdxf plate) {
      Geometry mark = together(plate.strokes());
      return IntStream.range(0, 4)
          .mapToObj(quarters -> carrying(mark, quarters))
          .filter(laid -> laid.transform(mark).equalsExact(engraved, EXACT))
          .map(laid -> (Polygon) inverse(laid).transform(wood))
          .findFirst();
    }

    /** Turns, and carries the first point of the mark to the first that is engraved. */
    private AffineTransformation carrying(Geometry mark, int quarters) {
      AffineTransformation laid =
          AffineTransformation.rotationInstance(Math.toRadians(90 * quarters));
      Coordinate from = laid.transform(mark.getCoordinate(), new Coordinate());
      Coordinate to = engraved.getCoordinate();
      return laid.translate(to.x - from.x, to.y - from.y);
    }

    private static AffineTransformation inverse(AffineTransformation laid) {
      try {
        return laid.getInverse();
      } catch (NoninvertibleTransformationException e) {
        throw new AssertionError(e);
      }
    }
  }

  /** Each piece that is cut free, without what the cutter takes and what falls out of it. */
  List<Piece> pieces() {
    Geometry gone = UnaryUnionOp.union(gone().toList());
    return path.rings("CUT_OUTSIDE").stream().map(edge -> piece(edge, gone)).toList();
  }

  private Stream<Geometry> gone() {
    Stream<Geometry> inside =
        Stream.concat(path.rings("CUT_INSIDE").stream(), path.discs("CUT_INSIDE").stream());
    Stream<Geometry> cut =
        Stream.concat(
            inside.map(slug -> swept(slug)),
            path.rings("CUT_OUTSIDE").stream().map(edge -> swept(edge.getExteriorRing())));
    return Stream.concat(cut, path.discs("DRILL").stream());
  }

  /** With every bend that the cutter takes: JTS by itself leaves out those below 1 % of its way. */
  private Geometry swept(Geometry way) {
    BufferParameters exact = new BufferParameters(CHORDS_A_QUARTER);
    exact.setSimplifyFactor(0);
    return BufferOp.bufferOp(way, width / 2, exact);
  }

  private Piece piece(Polygon edge, Geometry gone) {
    Polygon wood = assertInstanceOf(Polygon.class, edge.difference(gone), "in one piece");
    return new Piece(wood, together(path.strokes().stream().filter(edge::covers).toList()));
  }

  private static Geometry together(List<LineString> strokes) {
    return FACTORY.createMultiLineString(strokes.toArray(LineString[]::new));
  }
}
