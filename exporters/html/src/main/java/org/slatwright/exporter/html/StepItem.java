package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/**
 * One step of the order of work.
 *
 * @param names of the parts that it takes
 */
record StepItem(Step step, Names names) {

  /** As an item of the list of steps. */
  Element node() {
    List<Node> content = new ArrayList<>(List.of(heading(), times()));
    if (!step.caution().isEmpty()) {
      content.add(callout("caution", "Caution", List.of(Node.text(step.caution()))));
    }
    content.addAll(needs());
    content.add(
        Element.of("ol", step.doing().stream().map(StepItem::item).toList()).styled("doing"));
    if (!step.check().words().isEmpty()) {
      content.add(callout("check", "Check before you go on", Measures.wording(step.check())));
    }
    step.then().ifPresent(wait -> content.add(callout("wait", "Then wait", waiting(wait))));
    return Element.of("li", content).styled("step").with("id", anchor(step.number()));
  }

  private Node heading() {
    Node number = Element.of("span", Node.text("Step " + step.number())).styled("step-number");
    return Element.of(
        "h3", new Tick("step-" + step.id()).beside(number, Node.text(" " + step.title())));
  }

  private Node times() {
    List<Node> said = new ArrayList<>();
    if (!step.work().equals(Minutes.ZERO)) {
      said.add(Node.text("about " + step.work().words()));
    }
    for (int i = 0; i < step.after().size(); i++) {
      said.add(Node.text(i == 0 ? (said.isEmpty() ? "after " : ", after ") : joint(i)));
      int before = step.after().get(i);
      said.add(Element.of("a", "step " + before).with("href", "#" + anchor(before)));
    }
    return Element.of("p", said).styled("times");
  }

  private String joint(int index) {
    return index == step.after().size() - 1 ? " and " : ", ";
  }

  private List<Node> needs() {
    List<Element> needs = new ArrayList<>();
    if (!step.parts().isEmpty()) {
      needs.add(Overview.fact("Parts", list(step.parts().stream().map(this::part).toList())));
    }
    if (!step.tools().isEmpty()) {
      needs.add(Overview.fact("Tools", Node.text(String.join(", ", step.tools()))));
    }
    if (!step.supplies().isEmpty()) {
      needs.add(
          Overview.fact("Supplies", list(step.supplies().stream().map(StepItem::item).toList())));
    }
    return needs.isEmpty() ? List.of() : List.of(Element.of("dl", needs).styled("needs"));
  }

  private Element part(Step.Parts parts) {
    return Element.of(
        "li",
        Node.text(parts.count() + " × "),
        Element.of("b", parts.mark()).styled("mark"),
        Node.text(" " + names.of(parts.mark())));
  }

  private static Node list(List<Element> items) {
    return Element.of("ul", items);
  }

  private static Element item(Wording wording) {
    return Element.of("li", Measures.wording(wording));
  }

  private static List<Node> waiting(Step.Wait wait) {
    return List.of(Node.text(wait.time().words() + " at least: " + wait.why() + "."));
  }

  private static Node callout(String kind, String heading, List<Node> said) {
    List<Node> content = new ArrayList<>();
    content.add(Element.of("b", heading + ": "));
    content.addAll(said);
    return Element.of("p", content).styled("callout " + kind);
  }

  private static String anchor(int number) {
    return "step-" + number;
  }
}
