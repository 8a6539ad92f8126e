package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;

/** Which templates there are, and where to print them: a page on a screen is never full size. */
final class TemplateNotes {

  private TemplateNotes() {}

  static Section of(Plan plan) {
    List<Template> templates = plan.templates().whole();
    List<Node> content = new ArrayList<>();
    if (!templates.isEmpty()) {
      content.add(Element.of("p", advice(plan.lengths().unit())));
      content.add(Element.of("ul", templates.stream().map(TemplateNotes::item).toList()));
    }
    return new Section("templates", "Templates", content);
  }

  private static String advice(Unit unit) {
    return "Templates are laid on the work at full scale, so they are not in this page. Print "
        + Plan.TEMPLATE_BOOK
        + ".pdf, which comes with this plan, at 100 % (actual size), never fitted to the page."
        + " Then measure the check rules on each page: both must be "
        + checkRule(unit)
        + " long. If they are not, print again.";
  }

  private static String checkRule(Unit unit) {
    return new LengthFormat(unit).withUnit(Templates.checkRule(unit));
  }

  private static Element item(Template template) {
    return Element.of(
        "li",
        Node.text(template.title() + ", "),
        Measures.length(template.width()),
        Node.text(" × "),
        Measures.length(template.height()));
  }
}
