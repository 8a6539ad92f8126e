package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;

/**
 * A rack, or some pieces of it, from one side, at a place on the sheet.
 *
 * @param assembly what is seen
 * @param projection from where
 * @param scale of the view
 * @param id of the view, from which those of its pieces are made
 * @param across what is shown of it along u
 * @param up what is shown of it along v
 * @param left where its left edge lies on the sheet, in mm
 * @param bottom where its lower edge lies
 */
record RackView(
    Assembly assembly,
    Projection projection,
    Scale scale,
    String id,
    Shown across,
    Shown up,
    double left,
    double bottom) {

  /** A dowel thinner than this on paper is drawn as its axis alone when seen from the side. */
  private static final double THINNEST_ROD = 1.5;

  /** A dowel thinner than this on paper is left out: it would only blot what is around it. */
  private static final double LEAST_ROD = 0.3;

  private static final double AXIS_OVERRUN = 1;
  private static final double NM_PER_MM = 1e6;

  /** The view of {@code assembly}, all of it. */
  static RackView whole(
      Assembly assembly, Projection projection, Scale scale, double left, double bottom) {
    Projection.Rect extent = projection.cover(assembly.extent());
    return new RackView(
        assembly,
        projection,
        scale,
        projection.name().toLowerCase(Locale.ROOT),
        Shown.all(extent.left(), extent.right()),
        Shown.all(extent.bottom(), extent.top()),
        left,
        bottom);
  }

  double width() {
    return across.size(scale.factor());
  }

  double height() {
    return up.size(scale.factor());
  }

  double right() {
    return left + width();
  }

  double top() {
    return bottom + height();
  }

  /** Where a place of the picture lies on the sheet across, in mm. */
  double x(long u) {
    return left + across.place(u, scale.factor());
  }

  /** Where a place of the picture lies on the sheet upwards, in mm. */
  double y(long v) {
    return bottom + up.place(v, scale.factor());
  }

  /** What a piece covers, in mm on the sheet. */
  record Cover(double left, double bottom, double right, double top) {

    double middleX() {
      return (left + right) / 2;
    }

    double middleY() {
      return (bottom + top) / 2;
    }
  }

  /** Where a piece lies on the sheet. */
  Cover cover(Piece piece) {
    Projection.Rect rect = projection.cover(piece.box());
    return new Cover(x(rect.left()), y(rect.bottom()), x(rect.right()), y(rect.top()));
  }

  /** One cluster a piece that has a line of its own, in the order of the assembly. */
  List<Figure> figures() {
    Map<Piece, List<Figure>> byPiece = new LinkedHashMap<>();
    assembly.pieces().forEach(piece -> byPiece.put(piece, new ArrayList<>()));
    List<Piece> outlined = assembly.pieces().stream().filter(this::isOutlined).toList();
    for (VisibleLines.Stroke stroke : VisibleLines.of(outlined, projection)) {
      if (stroke.visible() || isTellingWhenHidden(stroke.piece())) {
        byPiece.get(stroke.piece()).addAll(lines(stroke));
      }
    }
    List<VisibleLines.Solid> opaque = VisibleLines.solids(opaquePieces(), projection);
    for (Piece dowel : assembly.pieces(Role.DOWEL)) {
      byPiece.get(dowel).addAll(rod(dowel, opaque));
    }
    return byPiece.entrySet().stream()
        .filter(entry -> !entry.getValue().isEmpty())
        .map(entry -> cluster(entry.getKey(), entry.getValue()))
        .toList();
  }

  /**
   * Slats of other shelves, each with its own widths, would only cross out those of the top one.
   */
  private boolean isTellingWhenHidden(Piece piece) {
    return projection != Projection.TOP || piece.part().role() != Role.SLAT;
  }

  private List<Piece> opaquePieces() {
    return assembly.pieces().stream().filter(piece -> piece.part().role() != Role.DOWEL).toList();
  }

  private Figure cluster(Piece piece, List<Figure> figures) {
    return new Figure.Cluster(
        id + "-" + piece.id(), piece.part().name() + " " + piece.id(), figures);
  }

  private boolean isOutlined(Piece piece) {
    return !(piece.part().shape() instanceof Shape.Rod rod)
        || !isOnEnd(piece) && onPaper(rod.diameter().nanometres()) >= THINNEST_ROD;
  }

  private boolean isOnEnd(Piece piece) {
    return piece.placement().length().axis() == projection.away().axis();
  }

  /**
   * A rod seen on end is a circle where it comes to the surface; a thin one seen aside, its axis.
   */
  private List<Figure> rod(Piece rod, List<VisibleLines.Solid> opaque) {
    boolean isBlot = onPaper(rod.part().shape().thickness().nanometres()) < LEAST_ROD;
    if (isBlot || !showsMiddle(rod)) {
      return List.of();
    }
    Cover cover = cover(rod);
    if (isOnEnd(rod)) {
      PaperPoint centre = new PaperPoint(cover.middleX(), cover.middleY());
      double radius = (cover.right() - cover.left()) / 2;
      return VisibleLines.isSeen(rod, opaque, projection)
          ? List.of(new Figure.Circle(centre, radius, LineKind.THIN))
          : List.of();
    }
    return isOutlined(rod) ? List.of() : List.of(axis(cover));
  }

  private static Figure axis(Cover cover) {
    double x = cover.middleX();
    double y = cover.middleY();
    boolean level = cover.right() - cover.left() > cover.top() - cover.bottom();
    return level
        ? Strokes.line(
            cover.left() - AXIS_OVERRUN, y, cover.right() + AXIS_OVERRUN, y, LineKind.CENTRE)
        : Strokes.line(
            x, cover.bottom() - AXIS_OVERRUN, x, cover.top() + AXIS_OVERRUN, LineKind.CENTRE);
  }

  private boolean showsMiddle(Piece piece) {
    Projection.Rect rect = projection.cover(piece.box());
    return across.shows(rect.left() + rect.width() / 2)
        && up.shows(rect.bottom() + rect.height() / 2);
  }

  /** A line for each stretch of it that is shown. */
  private List<Figure> lines(VisibleLines.Stroke stroke) {
    LineKind kind = stroke.visible() ? LineKind.VISIBLE : LineKind.HIDDEN;
    Shown along = stroke.horizontal() ? across : up;
    if (!(stroke.horizontal() ? up : across).shows(stroke.at())) {
      return List.of();
    }
    return along.of(stroke.from(), stroke.to()).stream()
        .map(
            span ->
                stroke.horizontal()
                    ? Strokes.line(
                        x(span.from()), y(stroke.at()), x(span.to()), y(stroke.at()), kind)
                    : Strokes.line(
                        x(stroke.at()), y(span.from()), x(stroke.at()), y(span.to()), kind))
        .toList();
  }

  /** The lines at which the view breaks off. */
  List<Figure> breaks() {
    List<Figure> lines = new ArrayList<>();
    across
        .breaks(scale.factor())
        .forEach(x -> lines.add(BreakLine.upright(left + x, bottom, top())));
    up.breaks(scale.factor()).forEach(y -> lines.add(BreakLine.level(bottom + y, left, right())));
    return lines;
  }

  private double onPaper(long nanometres) {
    return nanometres / NM_PER_MM * scale.factor();
  }
}
