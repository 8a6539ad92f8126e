package org.slatwright.exporter.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The published schema (JSON Schema, draft 2020-12) says neither less nor more than the file. */
class JsonSchemaTest {

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Schema SCHEMA =
      REGISTRY.getSchema(JsonExporter.class.getResourceAsStream(JsonExporter.SCHEMA));
  private static final Set<String> OPTIONAL = Set.of("then", "jig", "price", "cost");

  /** Between them they have everything that a file can hold, where it is optional too. */
  static Stream<Plan> whole() {
    return Stream.of(WareRack.inMillimetres(), SamplePlans.everyKind());
  }

  static Stream<Plan> plans() {
    return Written.anyPlan();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyFileIsValid(Plan plan) throws IOException, ExportException {
    String json = Written.files(plan).text("plan.json");
    assertEquals(List.of(), SCHEMA.validate(json, InputFormat.JSON));
  }

  @Test
  void theSchemaLiesBesideTheFileThatNamesIt() throws IOException, ExportException {
    String named = Written.plan(WareRack.inMillimetres()).get("$schema").asString();
    String beside = Written.files(WareRack.inMillimetres()).text(named);
    assertEquals(List.of(), REGISTRY.getSchema(beside).validate(Written.plan(WareRack.inInches())));
  }

  @Test
  void theSchemaIsItselfValid() throws IOException, ExportException {
    Schema meta =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    String schema = Written.files(WareRack.inMillimetres()).text("plan.schema.json");
    assertEquals(List.of(), meta.validate(schema, InputFormat.JSON));
  }

  @ParameterizedTest
  @MethodSource("whole")
  void whateverIsLeftOutIsMissed(Plan written) throws IOException, ExportException {
    JsonNode plan = Written.plan(written);
    for (ObjectNode object : distinctObjects(plan).toList()) {
      for (String key : List.copyOf(object.propertyNames())) {
        JsonNode value = object.get(key);
        boolean optional = isOptional(object, key);
        object.remove(key);
        assertEquals(optional, SCHEMA.validate(plan).isEmpty(), () -> "without " + key + object);
        object.set(key, value);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("whole")
  void whateverIsAddedIsRefused(Plan written) throws IOException, ExportException {
    JsonNode plan = Written.plan(written);
    for (ObjectNode object : distinctObjects(plan).toList()) {
      object.put("surprise", 1);
      assertFalse(SCHEMA.validate(plan).isEmpty(), object::toString);
      object.remove("surprise");
    }
  }

  @ParameterizedTest
  @MethodSource("whole")
  void whateverIsOfAnotherKindIsRefused(Plan written) throws IOException, ExportException {
    JsonNode plan = Written.plan(written);
    for (ObjectNode object : distinctObjects(plan).toList()) {
      for (String key : List.copyOf(object.propertyNames())) {
        JsonNode value = object.get(key);
        object.putNull(key);
        assertFalse(SCHEMA.validate(plan).isEmpty(), () -> "null in " + key + " of " + object);
        object.set(key, value);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/parts/0/role, leg",
    "/parts/0/holes/0/face, front",
    "/pieces/0/placement/length, +w",
    "/findings/0/severity, fatal",
    "/unit, in",
    "/parts/0/shape/length, 600 mm",
    "/cutting/timbers/0/stock, plywood",
    "/cutting/timbers/0/boards/0/source, stolen",
    "/cutting/cost, 10.30",
  })
  void aWordThatIsNotKnownIsRefused(String path, String word) throws IOException, ExportException {
    JsonNode plan = Written.plan(WareRack.inMillimetres());
    int slash = path.lastIndexOf('/');
    ObjectNode object = (ObjectNode) plan.at(path.substring(0, slash));
    assertTrue(object.has(path.substring(slash + 1)), path);
    object.put(path.substring(slash + 1), word);
    assertFalse(SCHEMA.validate(plan).isEmpty());
  }

  private static boolean isOptional(ObjectNode object, String key) {
    return switch (key) {
      // A brad has no length to buy, glue no number; a part has both.
      case "length", "quantity" -> object.has("what");
      // A hole may be drilled right through, but it has its depth all the same.
      case "depth" -> !object.has("through");
      // Nothing fits on top of what is open above.
      case "high", "spareAbove" -> object.has("thing");
      default -> OPTIONAL.contains(key);
    };
  }

  /** The plan itself and every object in it; of a list, the first of each kind. */
  private static Stream<ObjectNode> distinctObjects(JsonNode node) {
    Stream<ObjectNode> inside =
        node.isArray()
            ? Written.each(node).limit(3).flatMap(JsonSchemaTest::distinctObjects)
            : Written.each(node).flatMap(JsonSchemaTest::distinctObjects);
    return node instanceof ObjectNode object ? Stream.concat(Stream.of(object), inside) : inside;
  }
}
