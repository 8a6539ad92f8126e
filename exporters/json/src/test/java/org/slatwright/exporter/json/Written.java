package org.slatwright.exporter.json;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A plan written as JSON, and read by a parser that is not the one that wrote it: Jackson 3, which
 * comes with the schema validator.
 */
final class Written {

  private static final JsonMapper READER =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  // Designed once: the examples are whole racks.
  private static final List<Plan> PLANS =
      Stream.concat(
              SamplePlans.examples().stream(),
              Stream.of(
                  WareRack.inMillimetres(),
                  WareRack.inInches(),
                  SamplePlans.everyKind(),
                  SamplePlans.withoutJig(WareRack.inMillimetres()),
                  SamplePlans.bare(WareRack.inMillimetres())))
          .toList();

  private Written() {}

  static RecordingDestination files(Plan plan) throws IOException, ExportException {
    RecordingDestination destination = new RecordingDestination();
    new JsonExporter().export(plan, OptionValues.defaults(List.of()), destination);
    return destination;
  }

  static JsonNode plan(Plan plan) throws IOException, ExportException {
    return READER.readTree(files(plan).text("plan.json"));
  }

  /** Plans that differ in what they have. */
  static Stream<Plan> anyPlan() {
    return PLANS.stream();
  }

  static Stream<JsonNode> each(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false);
  }
}
