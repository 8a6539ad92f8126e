package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.cli.sizes.SizesTable;
import org.slatwright.cli.sizes.TableException;
import org.slatwright.design.rackfile.RackFileSchema;

/** Whoever adapts a plan may change every key of it, and is told what each takes the place of. */
class EveryKeyTest {

  private static final String RACK =
      """
      slatwright: 1
      title: Bench for herb drying trays
      units: mm
      increment: 1
      holds:
        - { name: tray, width: 270, depth: 300, height: 60, across: 2, clearance: 10 }
      timber:
        frame:
          section: 44 x 44
          species: norway spruce
          lengths: [ { length: 2400, price: 5.90, on-hand: 9 } ]
        rails: { section: 44 x 44, lengths: [ { length: 2400, price: 5.90, on-hand: 9 } ] }
        slats:
          section: 18 x 95
          lengths: [ { length: 2400, price: 4.40, on-hand: 9 } ]
          boards:
            - { length: 980, width: 95, thickness: 18, count: 3, avoid: [ 0..25 ] }
        dowel: { diameter: 10, rod-length: 1000, price: 1.80 }
      rack:
        bays: 1
        interior-width: 580
        rail-length: 320
        upright: 1500
        foot: 100
        openings: [ { clear: 380, count: 1 }, { clear: even } ]
        stands: free
        brace: none
        top: flush
      slats: { per-shelf: 3, thickness-step: 2, run: through, overhang: 0 }
      joint:
        dowels: 1
        embedment: 35
        fixing: { kind: brad, length: 45, diameter: 1.6, per-end: 2 }
      shop:
        kerf: 3.2
        end-trim: 10
        bit-reach: 110
        jig-sheet: 6
        sheet-size: 600 x 400
        guide-bush: 15
        cutter: { process: router, tool: 3, inside-corners: round }
        paper: A4
        print-margin: 6
      load: { per-shelf: 15 kg, climate: indoors }
      """;

  /** The one key that a rack in millimetres cannot have. */
  private static final String FEET = "feet-above";

  private static final String INCH_RACK =
      """
      slatwright: 1
      title: Bench for herb drying trays
      units: in
      feet-above: 60
      timber:
        frame: { section: 1 1/2 x 1 1/2, species: douglas-fir }
        slats: { section: 3/4 x 3 1/2 }
      rack: { interior-width: 24, rail-length: 12, upright: 62, openings: [ { clear: even, count: 2 } ] }
      """;

  private static final String STOCK = "{length: 3000, price: 6.10, on-hand: 8}";
  private static final String BOARD = "{length: 990, width: 94, thickness: 18}";

  /** Another value for each; what it cannot stand beside is left out by a setting before it. */
  private static final Map<String, String> VALUES =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("slatwright", "1"),
              Map.entry("title", "Bench for pots"),
              Map.entry("units", "mm"),
              Map.entry("increment", "2"),
              Map.entry(FEET, "72"),
              Map.entry("holds", "[]"),
              Map.entry("holds[]", "{name: pot, width: 90, depth: 90, height: 80}"),
              Map.entry("holds[].name", "pot"),
              Map.entry("holds[].width", "260"),
              Map.entry("holds[].depth", "290"),
              Map.entry("holds[].height", "50"),
              Map.entry("holds[].across", "1"),
              Map.entry("holds[].deep", "1"),
              Map.entry("holds[].high", "1"),
              Map.entry("holds[].lie", "either-way"),
              Map.entry("holds[].clearance", "5"),
              Map.entry("timber", "{frame: {section: 44 x 44}, slats: {section: 18 x 95}}"),
              Map.entry("timber.frame", "{section: 45 x 45}"),
              Map.entry("timber.frame.section", "45 x 45"),
              Map.entry("timber.frame.species", "douglas fir"),
              Map.entry("timber.frame.lengths", "[" + STOCK + "]"),
              Map.entry("timber.frame.lengths[]", STOCK),
              Map.entry("timber.frame.lengths[].length", "2500"),
              Map.entry("timber.frame.lengths[].price", "6"),
              Map.entry("timber.frame.lengths[].on-hand", "7"),
              Map.entry("timber.rails", "{section: 44 x 60}"),
              Map.entry("timber.rails.section", "44 x 60"),
              Map.entry("timber.rails.lengths", "[" + STOCK + "]"),
              Map.entry("timber.rails.lengths[]", STOCK),
              Map.entry("timber.rails.lengths[].length", "2500"),
              Map.entry("timber.rails.lengths[].price", "6"),
              Map.entry("timber.rails.lengths[].on-hand", "7"),
              Map.entry("timber.slats", "{section: 20 x 95}"),
              Map.entry("timber.slats.section", "20 x 90"),
              Map.entry("timber.slats.lengths", "[" + STOCK + "]"),
              Map.entry("timber.slats.lengths[]", STOCK),
              Map.entry("timber.slats.lengths[].length", "2500"),
              Map.entry("timber.slats.lengths[].price", "6"),
              Map.entry("timber.slats.lengths[].on-hand", "7"),
              Map.entry("timber.slats.boards", "[" + BOARD + "]"),
              Map.entry("timber.slats.boards[]", BOARD),
              Map.entry("timber.slats.boards[].length", "970"),
              Map.entry("timber.slats.boards[].width", "96"),
              Map.entry("timber.slats.boards[].thickness", "19"),
              Map.entry("timber.slats.boards[].count", "4"),
              Map.entry("timber.slats.boards[].avoid", "[0..30]"),
              Map.entry("timber.slats.boards[].avoid[]", "0..20"),
              Map.entry("timber.dowel", "{diameter: 12}"),
              Map.entry("timber.dowel.diameter", "12"),
              Map.entry("timber.dowel.rod-length", "900"),
              Map.entry("timber.dowel.length", "79"),
              Map.entry("timber.dowel.price", "2"),
              Map.entry("rack", "{interior-width: 500, rail-length: 320, upright: 900}"),
              Map.entry("rack.bays", "2"),
              Map.entry("rack.interior-width", "600"),
              Map.entry("rack.rail-length", "340"),
              Map.entry("rack.upright", "1600"),
              Map.entry("rack.foot", "120"),
              Map.entry("rack.stands", "anchored"),
              Map.entry("rack.brace", "back"),
              Map.entry("rack.openings", "[even, even]"),
              Map.entry("rack.openings[]", "400"),
              Map.entry("rack.openings[].clear", "360"),
              Map.entry("rack.openings[].count", "2"),
              Map.entry("rack.openings[].for", "tray"),
              Map.entry("rack.top", "40"),
              Map.entry("slats", "{per-shelf: 3}"),
              Map.entry("slats.per-shelf", "2"),
              Map.entry("slats.gap", "17"),
              Map.entry("slats.gap-range", "5..30"),
              Map.entry("slats.thickness-step", "1"),
              Map.entry("slats.run", "per-bay"),
              Map.entry("slats.overhang", "5"),
              Map.entry("joint", "{dowels: 1}"),
              Map.entry("joint.dowels", "1"),
              Map.entry("joint.embedment", "40"),
              Map.entry("joint.fixing", "{kind: screw}"),
              Map.entry("joint.fixing.kind", "screw"),
              Map.entry("joint.fixing.length", "50"),
              Map.entry("joint.fixing.diameter", "1.8"),
              Map.entry("joint.fixing.per-end", "1"),
              Map.entry("shop", "{kerf: 3}"),
              Map.entry("shop.kerf", "2.4"),
              Map.entry("shop.end-trim", "12"),
              Map.entry("shop.bit-reach", "150"),
              Map.entry("shop.jig-sheet", "9"),
              Map.entry("shop.cutter", "{process: laser, kerf: 0.15}"),
              Map.entry("shop.cutter.process", "router"),
              Map.entry("shop.cutter.tool", "4"),
              Map.entry("shop.cutter.kerf", "0.2"),
              Map.entry("shop.cutter.inside-corners", "relieved"),
              Map.entry("shop.sheet-size", "500 x 300"),
              Map.entry("shop.guide-bush", "16"),
              Map.entry("shop.paper", "A3"),
              Map.entry("shop.print-margin", "5"),
              Map.entry("load", "{per-shelf: 20 kg}"),
              Map.entry("load.per-shelf", "12 kg"),
              Map.entry("load.climate", "covered")));

  private static final Map<String, List<String>> FIRST =
      Map.of(
          "timber.dowel.length", List.of("timber.dowel.rod-length="),
          "rack.openings[].for", List.of("rack.openings[0].clear="),
          "slats.gap", List.of("slats.per-shelf="),
          "slats.gap-range", List.of("slats.per-shelf="),
          "shop.cutter.kerf",
              List.of(
                  "shop.cutter.tool=", "shop.cutter.inside-corners=", "shop.cutter.process=laser"));

  private Desk desk;

  @BeforeEach
  void setUp() throws IOException {
    desk = Desk.with(Path.of("src/test/desk"));
    Files.writeString(desk.directory().resolve("all.yaml"), RACK);
    Files.writeString(desk.directory().resolve("inches.yaml"), INCH_RACK);
  }

  @AfterEach
  void tidy() throws IOException {
    desk.close();
  }

  static Iterable<String> keys() {
    return RackFileSchema.keys();
  }

  @Test
  void theRackHasEveryKeyThatItCanHaveAtOnce() {
    assertEquals(VALUES.keySet(), RackFileSchema.keys());
    assertEquals("", desk.run("check", "all.yaml").err());
  }

  @ParameterizedTest
  @MethodSource("keys")
  void itIsSetAndToldWhatItTakesThePlaceOf(String key) {
    String file = key.equals(FEET) ? "inches.yaml" : "all.yaml";
    List<String> arguments = new ArrayList<>(List.of("check", file));
    for (String before : FIRST.getOrDefault(key, List.of())) {
      arguments.addAll(List.of("--set", before));
    }
    String setting = entry(key) + "=" + VALUES.get(key);
    arguments.addAll(List.of("--set", setting));
    String folded = desk.run(arguments.toArray(String[]::new)).err();
    List<String> told = folded.replaceAll("\\R {4}", " ").lines().toList();
    assertTrue(told.stream().allMatch(line -> line.startsWith("note: ")), told::toString);
    String note = told.get(told.size() - 1);
    assertTrue(note.startsWith("note: " + setting), note);
    String missing = ", which the file does not give";
    String given = "( within| instead of) .*(all|inches)\\.yaml:\\d+.*";
    assertTrue(
        note.substring(("note: " + setting).length())
            .matches(FIRST.containsKey(key) ? missing + "|" + given : given),
        note);
  }

  @Test
  void eachMayStandAboveAColumnOfATable() throws IOException, TableException {
    List<String> keys = RackFileSchema.keys().stream().map(EveryKeyTest::entry).toList();
    byte[] header = String.join(",", keys).getBytes(StandardCharsets.UTF_8);
    try (SizesTable table =
        SizesTable.open(new ByteArrayInputStream(header), RackFileSchema.keys())) {
      assertEquals(keys, table.keys());
    }
  }

  private static String entry(String key) {
    return key.replace("[]", "[0]");
  }
}
