package org.slatwright.exporter.json;

import java.io.IOException;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/** The order of work: its steps, with what each needs and waits for. */
final class WorkJson {

  private final JsonWriter json;

  WorkJson(JsonWriter json) {
    this.json = json;
  }

  /** Between its braces. */
  void work(OrderOfWork work) throws IOException {
    json.whole("workMinutes", work.work().count());
    json.whole("elapsedMinutes", work.elapsed().count());
    json.objects("steps", work.steps(), this::step);
  }

  private void step(Step step) throws IOException {
    json.whole("number", step.number());
    json.text("id", step.id());
    json.text("title", step.title());
    json.objects("doing", step.doing(), this::wording);
    json.objects("parts", step.parts(), this::parts);
    json.texts("places", step.places());
    json.texts("shows", step.shows());
    json.texts("tools", step.tools());
    json.objects("supplies", step.supplies(), this::wording);
    json.whole("workMinutes", step.work().count());
    if (step.then().isPresent()) {
      json.object("then", () -> then(step.then().get()));
    }
    json.wholes("after", step.after());
    json.object("check", () -> wording(step.check()));
    json.text("caution", step.caution());
  }

  private void wording(Wording wording) throws IOException {
    json.text("words", wording.words());
    json.lengths("lengths", wording.lengths());
  }

  private void parts(Step.Parts parts) throws IOException {
    json.text("mark", parts.mark());
    json.whole("count", parts.count());
  }

  private void then(Step.Wait wait) throws IOException {
    json.whole("minutes", wait.time().count());
    json.text("why", wait.why());
  }
}
