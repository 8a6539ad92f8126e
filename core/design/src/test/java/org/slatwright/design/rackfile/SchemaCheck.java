package org.slatwright.design.rackfile;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Checks rack files against the published schema as an editor would: by an independent validator,
 * on what YAML 1.2's core schema makes of the text.
 */
final class SchemaCheck {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final JsonNode ROOT = MAPPER.readTree(RackFileSchema.json());
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(RackFileSchema.json());

  private SchemaCheck() {}

  /** What the validator has against a YAML text. */
  static List<String> complaints(String yaml) {
    return complaints(load(yaml));
  }

  /** What the validator has against loaded YAML. */
  static List<String> complaints(Object yaml) {
    return SCHEMA.validate(MAPPER.<JsonNode>valueToTree(yaml)).stream()
        .map(error -> error.getInstanceLocation() + " " + error.getMessage())
        .toList();
  }

  /** Maps, lists, texts, numbers, true, false and null, by the core schema. */
  static Object load(String yaml) {
    LoadSettings settings = LoadSettings.builder().setSchema(new CoreSchema()).build();
    return new Load(settings).loadFromString(yaml);
  }

  /** Every key that the schema knows, {@code timber.frame.lengths[].price}. */
  static Set<String> keys() {
    return properties().keySet();
  }

  /** Every key that the schema describes. */
  static Set<String> describedKeys() {
    Set<String> described = new TreeSet<>();
    properties()
        .forEach(
            (key, schema) -> {
              if (schema.has("description") || resolved(schema).has("description")) {
                described.add(key);
              }
            });
    return described;
  }

  private static Map<String, JsonNode> properties() {
    Map<String, JsonNode> found = new TreeMap<>();
    collect(ROOT, "", found);
    return found;
  }

  private static void collect(JsonNode written, String path, Map<String, JsonNode> found) {
    JsonNode schema = resolved(written);
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      String key = path.isEmpty() ? property.getKey() : path + "." + property.getKey();
      found.put(key, property.getValue());
      collect(property.getValue(), key, found);
    }
    if (schema.has("items")) {
      collect(schema.get("items"), path + "[]", found);
    }
    for (JsonNode one : schema.path("anyOf")) {
      collect(one, path, found);
    }
  }

  private static JsonNode resolved(JsonNode schema) {
    return schema.has("$ref") ? ROOT.at(schema.get("$ref").asString().substring(1)) : schema;
  }
}
