package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;

/** The links of a chain as they are put together; links of no length are left out. */
final class Links {

  private final List<Chain.Link> links = new ArrayList<>();

  /** Adds a link. */
  Links add(String name, Sized size) {
    if (!size.length().isZero()) {
      links.add(new Chain.Link(name, size.length(), size.solved()));
    }
    return this;
  }

  /** Adds a link that the rack file gives. */
  Links add(String name, Length given) {
    return add(name, Sized.given(given));
  }

  /** The chain, which must add up to {@code total}. */
  Chain closing(String name, Length total) {
    return new Chain(name, links, total);
  }
}
