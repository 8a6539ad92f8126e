package org.slatwright.exporter.json;

import java.io.IOException;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;

/** A plan, top level first: what {@code plan.schema.json} describes. */
final class PlanJson {

  /** Changes only when a reader of the version before would break. */
  private static final int VERSION = 1;

  private final JsonWriter json;

  private PlanJson(JsonWriter json) {
    this.json = json;
  }

  /** Writes {@code plan} as a whole file. */
  static void write(Plan plan, JsonWriter json) throws IOException {
    json.file(() -> new PlanJson(json).plan(plan));
  }

  private void plan(Plan plan) throws IOException {
    json.text("$schema", JsonExporter.SCHEMA);
    json.text("format", "slatwright-plan");
    json.whole("version", VERSION);
    json.text("title", plan.title());
    json.text("unit", "mm");
    json.text("makersUnit", plan.lengths().unit().symbol());
    json.objects("chains", plan.chains(), this::chain);
    new AssemblyJson(json).write(plan.assembly());
    json.objects("cutList", plan.cutList(), this::cutLine);
    json.object("cutting", () -> new CuttingJson(json).cutting(plan.cutting()));
    QuantitiesJson quantities = new QuantitiesJson(json);
    json.object("quantities", () -> quantities.quantities(plan.quantities()));
    json.objects("fits", plan.fits(), quantities::fit);
    json.object("work", () -> new WorkJson(json).work(plan.work()));
    JigJson jig = new JigJson(json);
    if (plan.jig().isPresent()) {
      jig.write("jig", plan.jig().get());
    }
    jig.patterns("patterns", plan.patterns());
    json.objects("findings", plan.findings(), this::finding);
  }

  private void chain(Chain chain) throws IOException {
    json.text("name", chain.name());
    json.length("total", chain.total());
    json.objects("links", chain.links(), this::link);
  }

  private void link(Chain.Link link) throws IOException {
    json.text("name", link.name());
    json.length("length", link.length());
    json.flag("solved", link.solved());
  }

  private void cutLine(CutLine line) throws IOException {
    json.text("part", line.part().mark());
    json.whole("quantity", line.part().quantity());
    json.text("timber", line.timber());
    json.text("note", line.note());
  }

  private void finding(Finding finding) throws IOException {
    json.name("severity", finding.severity());
    json.text("rule", finding.rule());
    json.text("subject", finding.subject());
    json.text("message", finding.message());
    json.text("value", finding.value());
    json.text("limit", finding.limit());
    json.text("advice", finding.advice());
    json.text("source", finding.source());
  }
}
