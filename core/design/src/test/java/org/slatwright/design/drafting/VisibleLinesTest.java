package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.Projection.Rect;
import org.slatwright.design.drafting.VisibleLines.Stroke;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;

/** Hidden lines against asking, point by point, whether anything nearer covers the point. */
class VisibleLinesTest {

  @Property(tries = 30)
  void aLineIsHiddenExactlyWhereSomethingNearerCoversIt(
      @ForAll("racks") String rack, @ForAll Projection projection) throws Exception {
    List<Piece> pieces = pieces(rack);
    for (Stroke stroke : VisibleLines.of(pieces, projection)) {
      for (long along : List.of(stroke.from() + 1, middle(stroke), stroke.to() - 1)) {
        assertEquals(
            !isHidden(stroke, along, pieces, projection),
            stroke.visible(),
            () -> stroke + " at " + along);
      }
    }
  }

  @Property(tries = 30)
  void everyEdgeIsDrawnAndNoStretchTwice(
      @ForAll("racks") String rack, @ForAll Projection projection) throws Exception {
    List<Piece> pieces = pieces(rack);
    List<Stroke> strokes = VisibleLines.of(pieces, projection);
    for (Piece piece : pieces) {
      Rect cover = projection.cover(piece.box());
      assertDrawnOnce(strokes, true, cover.bottom(), cover.left(), cover.right());
      assertDrawnOnce(strokes, true, cover.top(), cover.left(), cover.right());
      assertDrawnOnce(strokes, false, cover.left(), cover.bottom(), cover.top());
      assertDrawnOnce(strokes, false, cover.right(), cover.bottom(), cover.top());
    }
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.solvable();
  }

  private static List<Piece> pieces(String rack) throws Exception {
    byte[] bytes = rack.getBytes(StandardCharsets.UTF_8);
    return Framing.frame(Sizing.solve(RackFileReader.read(bytes, "rack.yaml", List.of())))
        .pieces()
        .stream()
        .filter(piece -> piece.part().role() != Role.DOWEL)
        .toList();
  }

  private static long middle(Stroke stroke) {
    return stroke.from() + (stroke.to() - stroke.from()) / 2;
  }

  /** Also on the seam of two pieces that touch, which covers no more than an edge of each. */
  private static boolean isHidden(
      Stroke stroke, long along, List<Piece> pieces, Projection projection) {
    return isCovered(stroke, along, pieces, projection)
        || isCovered(stroke, along - 1, pieces, projection)
            && isCovered(stroke, along + 1, pieces, projection);
  }

  private static boolean isCovered(
      Stroke stroke, long along, List<Piece> pieces, Projection projection) {
    long depth = projection.depth(stroke.piece().box());
    long u = stroke.horizontal() ? along : stroke.at();
    long v = stroke.horizontal() ? stroke.at() : along;
    return pieces.stream()
        .filter(piece -> projection.depth(piece.box()) < depth)
        .map(piece -> projection.cover(piece.box()))
        .anyMatch(c -> c.left() < u && u < c.right() && c.bottom() < v && v < c.top());
  }

  private static void assertDrawnOnce(
      List<Stroke> strokes, boolean horizontal, long at, long from, long to) {
    long drawn = 0;
    for (Stroke stroke : strokes) {
      if (stroke.horizontal() == horizontal && stroke.at() == at) {
        drawn += Math.max(0, Math.min(to, stroke.to()) - Math.max(from, stroke.from()));
      }
    }
    assertEquals(to - from, drawn, "of the edge at " + at);
    assertTrue(to > from);
  }
}
