package org.slatwright.exporter.dxf;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern.Operation;

/** One thing in a drawing. Its operation is its layer. */
sealed interface Entity {

  /** What is done with it. */
  Operation operation();

  /** A closed run of straight lines and arcs. */
  record Contour(Operation operation, List<Outline.Edge> edges) implements Entity {
    public Contour {
      edges = List.copyOf(edges);
    }
  }

  /** A full circle. */
  record Circle(Operation operation, Point2 centre, Length radius) implements Entity {}

  /** A straight line. */
  record Line(Operation operation, Point2 from, Point2 to) implements Entity {}

  /** A line of lettering, from the left end of its baseline. */
  record Lettering(Operation operation, Point2 at, Length height, String text) implements Entity {}
}
