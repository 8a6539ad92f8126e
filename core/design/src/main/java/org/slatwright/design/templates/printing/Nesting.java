package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.packing.Packing;
import org.slatwright.design.packing.Spot;

/**
 * Nests pieces on pages.
 *
 * @param area of each page that is free for them, in mm on the page
 */
record Nesting(PaperBox area) {

  /** Between two pieces, so that scissors pass. */
  static final double SPACING_MM = 4;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /**
   * A piece in its place.
   *
   * @param page from 0
   * @param laying from the lower left corner of the piece to the page
   */
  record Laid(Piece piece, int page, Laying laying) {}

  /** A place for each, in the order given; each has room on an empty page. */
  List<Laid> of(List<? extends Piece> pieces) {
    List<Spot> spots =
        new Packing(area.width(), area.height(), SPACING_MM)
            .place(pieces.stream().map(Nesting::outline).toList())
            .orElseThrow(() -> new IllegalStateException("a piece is larger than a page"));
    return IntStream.range(0, pieces.size())
        .mapToObj(i -> laid(pieces.get(i), spots.get(i)))
        .toList();
  }

  private static Polygon outline(Piece piece) {
    return (Polygon) FACTORY.toGeometry(new Envelope(0, piece.width(), 0, piece.height()));
  }

  private Laid laid(Piece piece, Spot spot) {
    boolean turned = spot.quarterTurns() == 1;
    double right = spot.xMm() + (turned ? piece.height() : 0);
    PaperPoint at = new PaperPoint(area.left() + right, area.bottom() + spot.yMm());
    return new Laid(piece, spot.sheet(), new Laying(new PaperPoint(0, 0), at, turned, ""));
  }
}
