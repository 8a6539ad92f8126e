package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/** Chains beside each other that all measure the same view. */
record ChainRows(List<DimensionChain> chains) {

  private static final double FIRST = 7;
  private static final double NEXT = 5;

  ChainRows {
    chains = List.copyOf(chains);
  }

  /** How far they reach from the view, in mm. */
  double depth() {
    return FIRST
        + (chains.size() - 1) * NEXT
        + chains.stream().mapToDouble(DimensionChain::depth).sum();
  }

  /**
   * Drawn beside a view.
   *
   * @param origin where the links count from, along the chains
   * @param feature where the view ends
   * @param away 1 for chains above or to the right of it, -1 for below or to the left
   */
  List<Figure> figures(double origin, double feature, int away) {
    List<Figure> figures = new ArrayList<>();
    double line = feature + away * FIRST;
    for (DimensionChain chain : chains) {
      figures.addAll(chain.figures(origin, line, feature));
      line += away * (chain.depth() + NEXT);
    }
    return figures;
  }
}
