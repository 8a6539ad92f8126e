package org.slatwright.api.plan;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * What a machine cuts, drills or engraves from one flat face, real size. Nominal geometry, unless
 * the title says that it is the path of a cutter. Origin at the lower left, no coordinate negative.
 *
 * @param name the output name, such as {@code jig/J1-guide-plate}
 * @param title what it is, for a person
 * @param features in the order of work: inside before outside
 * @param labels for reading, never cut
 * @param engraved lettering of single strokes, drawn into the surface
 */
public record Pattern(
    String name, String title, List<Feature> features, List<Label> labels, List<Stroke> engraved) {

  public Pattern {
    features = List.copyOf(features);
    labels = List.copyOf(labels);
    engraved = List.copyOf(engraved);
  }

  /**
   * One stroke of an engraving: straight from point to point, not closed.
   *
   * @param points at least two
   */
  public record Stroke(List<Point2> points) {
    public Stroke {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a stroke has at least two points");
      }
    }
  }

  /**
   * One closed outline and what is done along it.
   *
   * @param operation what is done
   * @param outline along which line
   * @param depth how deep, or empty for right through
   */
  public record Feature(Operation operation, Outline outline, Optional<Length> depth) {}

  /**
   * A line of plain ASCII lettering.
   *
   * @param at the left end of its baseline
   * @param height of its capitals
   */
  public record Label(Point2 at, Length height, String text) {}

  /** What is done along an outline. */
  public enum Operation {
    /** A hole drilled at its centre. */
    DRILL,
    /** An opening: the waste is inside. */
    CUT_INSIDE,
    /** The edge of the piece: the waste is outside. */
    CUT_OUTSIDE,
    /** Not cut: shows the edge of a piece that is sawn to size before. */
    REFERENCE
  }
}
