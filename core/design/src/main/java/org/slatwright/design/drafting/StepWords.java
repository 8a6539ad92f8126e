package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/**
 * What a step says on paper: how long, what is done, with what, and the check that ends it.
 *
 * @param like the number of an earlier step that is done in the same way; it is not told again
 */
record StepWords(Step step, Optional<Integer> like, LengthFormat lengths) {

  /** One after the other. */
  List<String> paragraphs() {
    return like.map(earlier -> List.of(times(), "As step " + earlier + ", with its check."))
        .orElseGet(this::whole);
  }

  private List<String> whole() {
    List<String> said = new ArrayList<>();
    said.add(times());
    step.doing().forEach(sentence -> said.add(in(sentence)));
    with().ifPresent(said::add);
    said.add("Check: " + in(step.check()));
    if (!step.caution().isEmpty()) {
      said.add("Caution: " + step.caution());
    }
    return said;
  }

  private String times() {
    String after =
        step.after().isEmpty()
            ? ""
            : ", after "
                + step.after().stream().map(String::valueOf).collect(Collectors.joining(", "));
    String wait =
        step.then().map(then -> "; then " + then.time().words() + ": " + then.why()).orElse("");
    return "About " + step.work().words() + after + wait + ".";
  }

  /** Parts, tools and supplies. */
  private Optional<String> with() {
    String with =
        Stream.of(
                step.parts().stream().map(parts -> parts.count() + " × " + parts.mark()),
                step.supplies().stream().map(this::in),
                step.tools().stream())
            .map(each -> each.collect(Collectors.joining(", ")))
            .filter(each -> !each.isEmpty())
            .collect(Collectors.joining("; "));
    return with.isEmpty() ? Optional.empty() : Optional.of("With: " + with + ".");
  }

  private String in(Wording sentence) {
    return sentence.in(lengths);
  }
}
