package org.slatwright.exporter.html;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.figures.EmbeddedLettering;
import org.slatwright.exporter.figures.LetteringFont;

/** The page of one plan. */
final class PlanPage {

  private static final String LANGUAGE = "en";

  private final Plan plan;

  PlanPage(Plan plan) {
    this.plan = plan;
  }

  /** The file. */
  String html() throws IOException, ExportException {
    try (LetteringFont font = LetteringFont.open()) {
      EmbeddedLettering lettering = new EmbeddedLettering(font);
      String script = PageAssets.scripts();
      Element body = body(sections(lettering), script);
      lettering.use(Lettered.textOf(body));
      Element head = new PageHead(plan, PageStyle.of(plan, lettering), script).node();
      return HtmlWriter.document(
          Element.of("html", head, body)
              .with("lang", LANGUAGE)
              .with("data-unit", plan.lengths().unit().symbol()));
    }
  }

  private Element body(List<Section> sections, String script) {
    List<Node> blocks = sections.stream().map(Section::node).toList();
    return Element.of(
            "body",
            Element.of("a", "Skip to the plan").styled("skip").with("href", "#plan"),
            ControlBar.node(plan.lengths().unit()),
            title(),
            Element.of("div", contents(sections), Element.of("main", blocks).with("id", "plan"))
                .styled("columns"),
            Dialogs.viewer(),
            Dialogs.clearing(),
            Element.of("script", new Node.Verbatim(script)))
        .with("data-plan", PlanKey.of(plan));
  }

  private Node title() {
    return Element.of(
            "header",
            Element.of("p", "Plan for the bench").styled("kind"),
            Element.of("h1", name()).with("dir", "auto"))
        .styled("title");
  }

  private String name() {
    return plan.title().isBlank() ? "Rack without a title" : plan.title();
  }

  private static Node contents(List<Section> sections) {
    return Element.of(
            "nav",
            Element.of("h2", "Contents"),
            Element.of("ul", sections.stream().map(Section::link).toList()),
            Element.of(
                    "div",
                    Element.of("p").styled("progress").with("data-progress-all"),
                    Element.of("button", "Clear ticks").with("type", "button").with("data-clear"))
                .styled("all-ticks")
                .with("hidden"))
        .with("id", "contents")
        .with("aria-label", "Contents");
  }

  /** In the order that they are needed; those with nothing to say are left out. */
  private List<Section> sections(EmbeddedLettering lettering) throws IOException, ExportException {
    return Stream.of(
            Overview.of(plan),
            Holds.of(plan),
            Findings.before(plan),
            Drawings.of(plan, lettering),
            Buying.of(plan),
            Cuts.of(plan),
            Boards.of(plan),
            Stops.of(plan),
            Holes.of(plan),
            JigUse.of(plan),
            TemplateNotes.of(plan),
            Work.of(plan),
            Amounts.of(plan),
            Findings.checked(plan),
            About.of(plan))
        .filter(section -> !section.isEmpty())
        .toList();
  }
}
