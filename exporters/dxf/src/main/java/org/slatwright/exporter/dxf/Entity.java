package org.slatwright.exporter.dxf;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern.Operation;

/** One thing in a drawing. Its operation is its layer. */
sealed interface Entity {

  /** What is done with it. */
  Operation operation();

  /** The space that it takes. */
  Extent extent();

  /** A closed run of straight lines and arcs. */
  record Contour(Operation operation, Outline.Path outline) implements Entity {
    @Override
    public Extent extent() {
      return Extent.of(outline);
    }
  }

  /** A full circle. */
  record Circle(Operation operation, Outline.Circle outline) implements Entity {
    @Override
    public Extent extent() {
      return Extent.of(outline);
    }
  }

  /** A straight line. */
  record Line(Operation operation, Point2 from, Point2 to) implements Entity {
    @Override
    public Extent extent() {
      return Extent.at(from).around(Extent.at(to));
    }
  }

  /** A line of lettering, from the left end of its baseline. */
  record Lettering(Operation operation, Point2 at, Length height, String text) implements Entity {
    /** A character as wide as it is high: no reader's font is wider. */
    @Override
    public Extent extent() {
      Length width = height.times(text.length());
      return Extent.at(at).around(Extent.at(at.moved(width, height)));
    }
  }
}
