package org.slatwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.slatwright.api.plan.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code slatwright check}. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Says what the maker should know before the first cut: errors first, then warnings and"
          + " notes. Then what the rack weighs and uses up, what to buy, the sizes that were"
          + " solved, and what goes on each shelf.",
      "Ends with status 1 when something is an error."
    })
final class CheckCommand implements Callable<Integer> {

  private final Session session;

  @Mixin private RackInput rack;

  CheckCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws Refusal {
    Plan plan = rack.undrawn(session);
    print(FindingText.of(plan.findings()));
    print(QuantityText.of(plan));
    print(BuyingText.of(plan));
    print(ChainText.of(plan));
    FitText.of(plan).forEach(session.out()::println);
    return ExitStatus.of(plan).code();
  }

  /** A paragraph, with a blank line below it. */
  private void print(List<String> lines) {
    lines.forEach(session.out()::println);
    if (!lines.isEmpty()) {
      session.out().println();
    }
  }
}
