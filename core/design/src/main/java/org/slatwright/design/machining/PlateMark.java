package org.slatwright.design.machining;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Polygons;

/** Engraves the mark of a plate where nothing is cut, as near to its middle as there is room. */
final class PlateMark {

  /** From whatever is cut. */
  private static final double CLEAR_MM = 2;

  /** Places that are tried lie so far apart. */
  private static final double STEP_MM = 2;

  /** Larger is read more easily; smaller would be a blot. */
  private static final List<Length> HEIGHTS = Stream.of(8, 6, 5, 4, 3).map(Length::mm).toList();

  private final String mark;
  private final PreparedGeometry room;
  private final Envelope sheet;

  private PlateMark(Plate plate) {
    Geometry whole =
        Polygons.of(
            plate.boundary(),
            Stream.concat(plate.openings().stream(), plate.bores().stream()).toList());
    this.mark = plate.mark();
    this.room = PreparedGeometryFactory.prepare(whole.buffer(-CLEAR_MM));
    this.sheet = whole.getEnvelopeInternal();
  }

  /** The strokes of the mark, in the axes of the plate; none where there is no room. */
  static List<Pattern.Stroke> of(Plate plate) {
    PlateMark mark = new PlateMark(plate);
    return HEIGHTS.stream()
        .flatMap(height -> mark.strokes(height).stream())
        .findFirst()
        .orElse(List.of());
  }

  private Optional<List<Pattern.Stroke>> strokes(Length height) {
    double width = StrokeLetters.width(mark, height).inMm();
    Coordinate middle =
        new Coordinate(sheet.centre().x - width / 2, sheet.centre().y - height.inMm() / 2);
    return corners(middle)
        .filter(low -> isFree(low, width, height.inMm()))
        .findFirst()
        .map(low -> StrokeLetters.of(mark, point(low), height));
  }

  /** Nearest to the middle first. */
  private Stream<Coordinate> corners(Coordinate middle) {
    int across = (int) (sheet.getWidth() / 2 / STEP_MM);
    int up = (int) (sheet.getHeight() / 2 / STEP_MM);
    return IntStream.rangeClosed(-across, across)
        .boxed()
        .flatMap(
            x ->
                IntStream.rangeClosed(-up, up)
                    .mapToObj(y -> new Coordinate(middle.x + x * STEP_MM, middle.y + y * STEP_MM)))
        .sorted(
            Comparator.<Coordinate>comparingDouble(middle::distance)
                .thenComparing(Comparator.naturalOrder()));
  }

  private boolean isFree(Coordinate low, double width, double height) {
    Envelope box = new Envelope(low.x, low.x + width, low.y, low.y + height);
    return room.covers(room.getGeometry().getFactory().toGeometry(box));
  }

  private static Point2 point(Coordinate at) {
    return new Point2(Length.roundedMm(at.x), Length.roundedMm(at.y));
  }
}
