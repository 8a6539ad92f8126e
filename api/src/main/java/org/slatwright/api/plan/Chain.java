package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * A chain of dimensions that closes: its links add up to its total, to the nanometre.
 *
 * @param name what it measures: {@code height}, {@code depth}, {@code width}, …
 * @param links in order, from the floor up, from the front back, or from the left
 * @param total their sum
 */
public record Chain(String name, List<Link> links, Length total) {

  public Chain {
    links = List.copyOf(links);
    Length sum = links.stream().map(Link::length).reduce(Length.ZERO, Length::plus);
    if (!sum.equals(total)) {
      throw new IllegalArgumentException(name + " chain adds up to " + sum + ", not " + total);
    }
  }

  /**
   * One link.
   *
   * @param name what it is: {@code foot}, {@code rail}, {@code slat}, {@code clear}, …
   * @param length its size; zero links are left out by whoever makes the chain
   * @param solved whether it was worked out, rather than given in the rack file
   */
  public record Link(String name, Length length, boolean solved) {}
}
