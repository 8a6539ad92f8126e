package org.slatwright.exporter.dxf;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/** One thing in a drawing. Its layer says what is done with it. */
sealed interface Entity {

  /** What is done with it. */
  Layer layer();

  /** The space that it takes. */
  Extent extent();

  /** A closed run of straight lines and arcs. */
  record Contour(Layer layer, Outline.Path outline) implements Entity {
    @Override
    public Extent extent() {
      return Extent.of(outline);
    }
  }

  /** A full circle. */
  record Circle(Layer layer, Outline.Circle outline) implements Entity {
    @Override
    public Extent extent() {
      return Extent.of(outline);
    }
  }

  /** Straight from point to point, not closed. */
  record Stroke(Layer layer, List<Point2> points) implements Entity {
    public Stroke {
      points = List.copyOf(points);
    }

    @Override
    public Extent extent() {
      return points.stream().map(Extent::at).reduce(Extent::around).orElseThrow();
    }
  }

  /** A straight line. */
  record Line(Layer layer, Point2 from, Point2 to) implements Entity {
    @Override
    public Extent extent() {
      return Extent.at(from).around(Extent.at(to));
    }
  }

  /** A line of lettering, from the left end of its baseline. */
  record Lettering(Layer layer, Point2 at, Length height, String text) implements Entity {
    /** A character as wide as it is high: no reader's font is wider. */
    @Override
    public Extent extent() {
      Length width = height.times(text.length());
      return Extent.at(at).around(Extent.at(at.moved(width, height)));
    }
  }
}
