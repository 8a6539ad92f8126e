package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Plan;

/** Spells the dimension chains of a rack for a terminal. */
final class ChainText {

  private static final String SOLVED = "*";

  private ChainText() {}

  /** Each chain as a sum that adds up, folded at the width of a terminal. */
  static List<String> of(Plan plan) {
    int name = plan.chains().stream().mapToInt(chain -> chain.name().length()).max().orElse(0);
    List<String> lines = new ArrayList<>();
    for (Chain chain : plan.chains()) {
      String head = chain.name() + " ".repeat(name - chain.name().length() + 2);
      lines.addAll(Folding.lines(head, " ".repeat(head.length()), terms(chain, plan.lengths())));
    }
    boolean solved =
        plan.chains().stream()
            .flatMap(chain -> chain.links().stream())
            .anyMatch(Chain.Link::solved);
    if (solved) {
      lines.add(SOLVED + " solved, not given in the rack file");
    }
    return lines;
  }

  private static List<String> terms(Chain chain, LengthFormat lengths) {
    List<String> terms = new ArrayList<>();
    terms.add(lengths.withUnit(chain.total()));
    for (Chain.Link link : chain.links()) {
      String sign = terms.size() == 1 ? "= " : "+ ";
      terms.add(
          sign + link.name() + " " + lengths.number(link.length()) + (link.solved() ? SOLVED : ""));
    }
    return terms;
  }
}
