package org.slatwright.design.templates.printing;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;

/**
 * A template before it is printed.
 *
 * @param name its output name: {@code templates/U-drilling}
 * @param title what it is for
 * @param use how to use it, one sentence a step
 * @param width to the right, real size
 * @param height up, real size
 * @param figures in mm from its lower left corner, none of them outside
 * @param whole what no cut between two pages may run through or come near, where it can be helped
 */
public record Draft(
    String name,
    String title,
    List<String> use,
    Length width,
    Length height,
    List<Figure> figures,
    List<Disc> whole) {

  public Draft {
    use = List.copyOf(use);
    figures = List.copyOf(figures);
    whole = List.copyOf(whole);
  }

  /** A hole with what surrounds it, in mm. */
  public record Disc(PaperPoint centre, double radiusMm) {}
}
