package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class RackFileSchemaTest {

  private static final List<String> SINGLE_VALUES =
      List.of(
          "44",
          "0",
          "4.4",
          "44 mm",
          "1 3/4 in",
          "4' 6 1/2\"",
          "0 mm",
          "1-3/4\"",
          "-3",
          "44 x 44",
          "44 × 70 mm",
          "1 1/2 x 3 1/2 in",
          "3..20",
          "1/8..3/4 in",
          "even",
          "flush",
          "mm",
          "in",
          "through",
          "per-bay",
          "brad",
          "screw",
          "router",
          "laser",
          "letter",
          "15 kg",
          "30 lb",
          "5.90",
          "\"3\"",
          "\"44\"",
          "null",
          "",
          "true",
          "A4",
          "1",
          "2");

  private static final List<String> GROUPS_AND_LISTS =
      List.of(
          "null",
          "44",
          "[]",
          "{}",
          "[ 44 ]",
          "{ clear: even }",
          "[ { clear: 60, count: 2 }, even, 300 ]",
          "{ section: 44 x 44 }",
          "{ section: 9x9, a: 1 }",
          "[ { length: 2400, price: 1 } ]",
          "{ boards: [] }",
          "{ lengths: [] }",
          "{ process: laser, kerf: 0.15 }",
          "{ process: laser, tool: 3 }",
          "{ per-shelf: 15 kg }",
          "{ rod-length: 1 m, length: 80 }",
          "{ length: 40, per-end: 6 }",
          "{ per-end: 7 }",
          "[ { name: pot, width: 1 ft, depth: 9, height: 3 } ]",
          "[ { name: pot } ]",
          "[ { name: pot, width: 9, depth: 9, height: 3, deep: 2, high: 3, lie: either-way } ]",
          "[ { name: pot, width: 9, depth: 9, height: 3, lie: askew } ]",
          "[ { for: pot, count: 2 } ]",
          "[ { length: 980, width: 92, thickness: 16, avoid: [ 0..25, 1/2..3 in ] } ]");

  @Test
  void theSchemaIsAValidSchemaOfItsDraft() {
    Schema draft =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}");
    JsonNode schema = new ObjectMapper().readTree(RackFileSchema.json());

    assertEquals(List.of(), draft.validate(schema));
  }

  @Test
  void aFileWithEveryKeyFitsTheSchema() throws Exception {
    String file = RackFileReaderTest.text("every-key.yaml");

    assertEquals(List.of(), SchemaCheck.complaints(file));
  }

  @Test
  void schemaAndReaderKnowTheSameKeys() throws Exception {
    Complaints complaints = new Complaints(List.of());
    String file = RackFileReaderTest.text("every-key.yaml");
    Node root = YamlTree.ofFile(file, "every-key.yaml", complaints).orElseThrow();
    Reading reading = new Reading(complaints);
    new FormatOne(reading).rackFile((Node.Mapping) root, Map.of());

    Set<String> known = new TreeSet<>();
    reading
        .askedFor()
        .forEach(
            (group, keys) ->
                keys.forEach(key -> known.add(group.isEmpty() ? key : group + "." + key)));

    assertEquals(SchemaCheck.keys(), known);
  }

  @Test
  void everyKeyIsDescribedForTheEditor() {
    Set<String> without = new TreeSet<>(SchemaCheck.keys());
    without.removeAll(SchemaCheck.describedKeys());

    assertEquals(Set.of(), without);
  }

  @Test
  void whateverTheReaderReadsTheSchemaAllows() throws Exception {
    Set<String> keys = SchemaCheck.keys();
    int read = 0;
    for (String key : keys.stream().filter(k -> !k.contains("[]")).toList()) {
      boolean holdsMore = keys.stream().anyMatch(k -> k.matches("\\Q" + key + "\\E[.\\[].*"));
      for (String value : holdsMore ? GROUPS_AND_LISTS : SINGLE_VALUES) {
        if (isRead(key, value)) {
          read++;
          assertEquals(List.of(), complaints(key, value), key + ": " + value);
        }
      }
    }
    assertTrue(read > 250, "only " + read + " combinations say anything");
  }

  @Test
  void theSchemaCatchesWhatDependsOnNothingElse() {
    Map<String, String> wrong = new LinkedHashMap<>();
    wrong.put("slatwright", "2");
    wrong.put("rack.bays", "51");
    wrong.put("rack.upright", "14x");
    wrong.put("rack.foot", "-3");
    wrong.put("rack.uprigth", "1400");
    wrong.put("rack.top", "flsh");
    wrong.put("rack.openings", "[ { count: 2 } ]");
    wrong.put("holds", "[ { name: pot, width: 9, depth: 9, height: 3, lie: askew } ]");
    wrong.put("timber.frame.section", "44");
    wrong.put("timber.slats", "{ lengths: [ { length: 2400 } ], boards: [] }");
    wrong.put("joint.dowels", "3");
    wrong.put("shop.cutter", "{ process: laser, tool: 3 }");
    wrong.put("load.per-shelf", "15");
    wrong.forEach(
        (key, value) -> {
          assertFalse(isRead(key, value), "the reader takes " + key + ": " + value);
          assertFalse(complaints(key, value).isEmpty(), key + ": " + value);
        });
  }

  private static boolean isRead(String key, String value) {
    try {
      byte[] file = ErrorMessagesTest.HEAD.getBytes(StandardCharsets.UTF_8);
      RackFileReader.read(file, "rack.yaml", List.of(key + "=" + value));
      return !value.isEmpty(); // an empty setting leaves the key out
    } catch (RackFileException e) {
      return false;
    }
  }

  @Test
  void itsKeysAreThoseThatAnotherReaderOfItFinds() {
    Set<String> keys = new TreeSet<>(RackFileSchema.keys());
    keys.removeIf(key -> key.endsWith("[]"));
    assertEquals(SchemaCheck.keys(), keys);
    assertTrue(RackFileSchema.keys().contains("timber.slats.boards[].avoid[]"));
  }

  /** What an editor says to the smallest file with one value changed or added. */
  private static List<String> complaints(String key, String value) {
    Object file = SchemaCheck.load(ErrorMessagesTest.HEAD);
    put(file, List.of(key.split("\\.")), SchemaCheck.load(value));
    return SchemaCheck.complaints(file);
  }

  @SuppressWarnings("unchecked")
  private static void put(Object group, List<String> path, Object value) {
    Map<String, Object> map = (Map<String, Object>) group;
    if (path.size() == 1) {
      map.put(path.get(0), value);
    } else {
      Object inner = map.computeIfAbsent(path.get(0), key -> new LinkedHashMap<>());
      put(inner, path.subList(1, path.size()), value);
    }
  }
}
