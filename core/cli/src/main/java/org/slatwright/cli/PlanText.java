package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;

/** Spells what is known about a rack for a terminal. */
final class PlanText {

  private static final int WIDTH = 80;
  private static final String SOLVED = "*";

  private PlanText() {}

  /** {@code warning: slat S: bends 3 mm, limit 2 mm; use thicker slats [source]}. */
  static String finding(Finding finding) {
    String advice = finding.advice().isEmpty() ? "" : "; " + finding.advice();
    String source = finding.source().isEmpty() ? "" : " [" + finding.source() + "]";
    return finding.severity().word()
        + ": "
        + finding.subject()
        + ": "
        + finding.message()
        + numbers(finding)
        + advice
        + source;
  }

  private static String numbers(Finding finding) {
    String value = finding.value().isEmpty() ? "" : ": " + finding.value();
    return value + (finding.limit().isEmpty() ? "" : ", " + finding.limit());
  }

  /** Each chain as a sum that adds up, folded at the width of a terminal. */
  static List<String> chains(Plan plan) {
    int name = plan.chains().stream().mapToInt(chain -> chain.name().length()).max().orElse(0);
    List<String> lines = new ArrayList<>();
    for (Chain chain : plan.chains()) {
      String head = chain.name() + " ".repeat(name - chain.name().length() + 2);
      lines.addAll(folded(head, terms(chain, plan.lengths())));
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

  private static List<String> folded(String head, List<String> terms) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(head);
    boolean fresh = true;
    for (String term : terms) {
      if (!fresh && line.length() + 1 + term.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(head.length()));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(term);
      fresh = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
