package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * A chain and, outside it, the overall dimension that it adds up to; the overall dimension alone
 * where the chain has a single link.
 */
final class ChainPair {

  private static final double FIRST = 7;
  private static final double NEXT = 5;
  private static final int MOST_ROWS = 2;

  private final List<DimensionChain> chains;

  private ChainPair(List<DimensionChain> chains) {
    this.chains = chains;
  }

  static ChainPair across(List<Link> links, LengthFormat lengths) {
    return of(links, lengths, AcrossChain::new);
  }

  static ChainPair up(List<Link> links, LengthFormat lengths) {
    return of(links, lengths, UpChain::new);
  }

  /** The chain by itself, of a view that breaks off. */
  static ChainPair upAlone(List<Link> links) {
    return new ChainPair(List.of(new UpChain(links)));
  }

  /** The chain by itself, where the overall dimension stands elsewhere. */
  static ChainPair acrossAlone(List<Link> links) {
    return new ChainPair(List.of(new AcrossChain(links)));
  }

  private static ChainPair of(
      List<Link> links, LengthFormat lengths, Function<List<Link>, DimensionChain> chain) {
    Length total = links.stream().map(Link::value).reduce(Length.ZERO, Length::plus);
    Link overall =
        new Link(
            links.get(0).from(), links.get(links.size() - 1).to(), total, lengths.number(total));
    DimensionChain outside = chain.apply(List.of(overall));
    return new ChainPair(
        links.size() == 1 ? List.of(outside) : List.of(chain.apply(links), outside));
  }

  /** Whether its numbers stand in two columns at most. */
  boolean isEasyToRead() {
    return chains.stream().allMatch(chain -> chain.rows() <= MOST_ROWS);
  }

  /** How far both reach from the view, in mm. */
  double depth() {
    double between = (chains.size() - 1) * NEXT;
    return FIRST + between + chains.stream().mapToDouble(DimensionChain::depth).sum();
  }

  /** How far a number stands out beyond the start of the chains, in mm. */
  double before() {
    return chains.stream().mapToDouble(DimensionChain::before).max().orElse(0);
  }

  /** How far a number stands out beyond the end of the chains, in mm. */
  double after() {
    return chains.stream().mapToDouble(DimensionChain::after).max().orElse(0);
  }

  /**
   * Drawn beside a view. The extension lines of the overall dimension break off where numbers of
   * the chain stand in their way.
   *
   * @param origin where the links count from, along the chains
   * @param feature where the view ends
   * @param away 1 for chains above or to the right of it, -1 for below or to the left
   */
  List<Figure> figures(double origin, double feature, int away) {
    List<Figure> figures = new ArrayList<>();
    double line = feature + away * FIRST;
    double measured = feature;
    for (DimensionChain chain : chains) {
      figures.addAll(chain.figures(origin, line, measured));
      measured = chain.isShort() ? line + away * chain.depth() : line;
      line += away * (chain.depth() + NEXT);
    }
    return figures;
  }
}
