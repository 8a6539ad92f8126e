package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Plan;

/** The order of work. */
final class Work {

  private Work() {}

  static Section of(Plan plan) {
    OrderOfWork work = plan.work();
    Names names = new Names(plan);
    List<Element> steps =
        work.steps().stream().map(step -> new StepItem(step, names).node()).toList();
    List<Node> content =
        steps.isEmpty()
            ? List.of()
            : Stream.of(times(work), Element.of("ol", steps).styled("steps").with("role", "list"))
                .toList();
    return new Section("work", "Order of work", content);
  }

  private static Node times(OrderOfWork work) {
    List<Node> said = new ArrayList<>();
    said.add(
        Node.text(
            "About "
                + work.work().words()
                + " of work for one person, "
                + work.elapsed().words()
                + " from start to end with what must dry or cure. Times are rough; finish each step"
                + " with its check before you tick it."));
    return Element.of("p", said);
  }
}
