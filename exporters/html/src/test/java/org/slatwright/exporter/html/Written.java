package org.slatwright.exporter.html;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** Pages as the exporter writes them, and as an HTML parser of others reads them. */
final class Written {

  private static final int MOST_ERRORS = 20;

  /** Planned once: each is a whole rack, drawn anew. */
  private static final List<Plan> PLANS = allPlans();

  private Written() {}

  static String page(Plan plan) throws ExportException, IOException {
    RecordingDestination destination = new RecordingDestination();
    new HtmlExporter().export(plan, OptionValues.defaults(List.of()), destination);
    return new String(destination.bytes("plan-book.html"), StandardCharsets.UTF_8);
  }

  static Path file(Plan plan, Path folder) throws ExportException, IOException {
    return Files.writeString(folder.resolve("plan-book.html"), page(plan));
  }

  static Document document(Plan plan) throws ExportException, IOException {
    return parser().parseInput(page(plan), "");
  }

  /** What breaks the syntax of HTML, by jsoup, which follows the parser of the standard. */
  static List<String> errors(Plan plan) throws ExportException, IOException {
    Parser parser = parser();
    parser.parseInput(page(plan), "");
    return parser.getErrors().stream().map(Object::toString).toList();
  }

  private static Parser parser() {
    return Parser.htmlParser().setTrackErrors(MOST_ERRORS);
  }

  /** Real racks, hand-made ones with every kind of statement, odd titles, and next to nothing. */
  static List<Plan> plans() {
    return PLANS;
  }

  private static List<Plan> allPlans() {
    List<Plan> plans = new ArrayList<>(SamplePlans.examples());
    plans.add(WareRack.inMillimetres());
    plans.add(WareRack.inInches());
    plans.add(SamplePlans.everyKind());
    plans.add(SamplePlans.bare(SamplePlans.everyKind()));
    plans.add(SamplePlans.withoutDrawings(SamplePlans.everyKind()));
    SamplePlans.ODD_TITLES.stream().map(SamplePlans::titled).forEach(plans::add);
    return List.copyOf(plans);
  }
}
