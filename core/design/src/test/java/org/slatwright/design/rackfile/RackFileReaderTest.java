package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;

class RackFileReaderTest {

  private static final String SMALLEST = ErrorMessagesTest.HEAD;

  @Test
  void eachKeyMeansWhatItSays() throws Exception {
    RackFile file = read("every-key.yaml");
    RackFile.Rack rack = file.rack();

    assertEquals(
        new RackFile.Held(
            "seed tray",
            Length.mm(285),
            Length.mm(545),
            Length.mm(60),
            2,
            1,
            6,
            RackFile.Lie.EITHER_WAY,
            Length.mm(12)),
        file.holds().get(0));
    assertEquals(
        new Section(Length.mm(44), Length.mm(70)), file.timber().railSection().get().value());
    RackFile.StockLength rails = file.timber().rails().get().lengths().get(0);
    assertEquals(Length.mm(3000), rails.length().value());
    assertEquals(Optional.of(new BigDecimal("9.90")), rails.price());
    assertEquals(Optional.of(4), rails.onHand());
    assertEquals(Optional.of(new BigDecimal("1.60")), file.timber().dowel().price());
    assertEquals("norway spruce", file.timber().frame().species().get().value());
    assertEquals(
        List.of(Optional.of(new BigDecimal("5.90")), Optional.empty()),
        file.timber().frame().lengths().stream().map(RackFile.StockLength::price).toList());
    assertEquals(
        List.of(Optional.empty(), Optional.of(2)),
        file.timber().frame().lengths().stream().map(RackFile.StockLength::onHand).toList());
    assertEquals(
        List.of(
            new RackFile.Clear.Fixed(Length.mm(300)),
            new RackFile.Clear.Fixed(Length.mm(160)),
            new RackFile.Clear.Even(),
            new RackFile.Clear.For(file.holds().get(0))),
        rack.openings().get().value().stream().map(opening -> opening.clear().value()).toList());
    assertEquals(3, rack.openings().get().value().get(1).count());
    assertEquals(new RackFile.Top.Flush(), rack.top().get().value());
    assertEquals(
        new RackFile.Range(Length.mm(3), Length.mm(20)), file.slats().gapRange().get().value());
    assertEquals(Length.roundedMm(1.5), file.slats().thicknessStep());
    assertEquals(
        Optional.of(new RackFile.Cutter.Router(Length.roundedMm(3.175), false)),
        file.shop().cutter());
    assertEquals(new Mass(15_000), file.load().perShelf().get().value());
  }

  @Test
  void aValueKnowsItsPlaceAndItsKey() throws Exception {
    RackFile file = read("every-key.yaml");

    assertEquals(
        new Given<>(Length.mm(1500), "rack.upright", new Place("every-key.yaml", 29, 12)),
        file.rack().upright().get());
    List<RackFile.Opening> openings = file.rack().openings().get().value();
    assertEquals("rack.openings[0]", openings.get(0).clear().key());
    assertEquals("rack.openings[1].clear", openings.get(1).clear().key());
    assertEquals(new Place("every-key.yaml", 33, 16), openings.get(1).clear().place());
    assertEquals("timber.slats.boards[1]", file.timber().slats().boards().get(1).key());
  }

  @Test
  void theSmallestFileTakesTheMillimetreDefaults() throws Exception {
    RackFile file = readText(SMALLEST);

    assertEquals(Unit.MM, file.units());
    assertEquals(Length.mm(1), file.increment());
    assertEquals(List.of(), file.holds());
    assertEquals(1, file.rack().bays());
    assertEquals(Optional.empty(), file.rack().openings());
    assertEquals(RackFile.Run.THROUGH, file.slats().run().value());
    assertEquals(Length.ZERO, file.slats().overhang());
    assertEquals(1, file.joint().dowels().value());
    assertEquals(Fastener.Kind.BRAD, file.joint().fixing().kind());
    assertEquals(2, file.joint().fixing().perEnd());
    assertEquals(Length.roundedMm(3.2), file.shop().kerf());
    assertEquals(Length.mm(10), file.shop().endTrim());
    assertEquals(Length.mm(6), file.shop().jigSheet().value());
    assertEquals(Paper.A4, file.shop().paper());
  }

  @Test
  void anInchFileTakesInchDefaultsAndReadsBareNumbersAsInches() throws Exception {
    RackFile file = readText(SMALLEST + "rack: { upright: 59 1/16, foot: 100 mm }\nunits: in\n");

    assertEquals(Length.inches(1, 16), file.increment());
    assertEquals(Length.inches(1, 8), file.shop().kerf());
    assertEquals(Length.inches(3, 8), file.shop().endTrim());
    assertEquals(Length.inches(1, 4), file.shop().jigSheet().value());
    assertEquals(Length.inches(1, 16), file.slats().thicknessStep());
    assertEquals(Paper.LETTER, file.shop().paper());
    assertEquals(Length.inches(945, 16), file.rack().upright().get().value());
    assertEquals(Length.mm(100), file.rack().foot().get().value());
    assertEquals(Length.inches(44, 1), file.timber().frame().section().value().first());
  }

  @Test
  void aDefaultNamesTheFileAsItsPlace() throws Exception {
    assertEquals("rack.yaml", readText(SMALLEST).shop().jigSheet().place().toString());
  }

  /** The pound is 0.453 592 37 kg by the International Yard and Pound Agreement of 1959. */
  @ParameterizedTest
  @CsvSource({"15 kg, 15000", "800 g, 800", "30 lb, 13608", "0.5kg, 500", "1 lb, 454", "1.4 g, 1"})
  void massesAreWholeGrams(String text, long grams) throws Exception {
    RackFile file = readText(SMALLEST, "load.per-shelf=" + text);

    assertEquals(new Mass(grams), file.load().perShelf().get().value());
  }

  @ParameterizedTest
  @CsvSource({
    "44 x 70, 44, 70",
    "44x70, 44, 70",
    "44 X 70 mm, 44, 70",
    "44 mm × 7 cm, 44, 70",
    "44 mm x 70, 44, 70",
    "1 1/2 x 3 1/2 in, 38.1, 88.9",
    "1-1/2\" x 70 mm, 38.1, 70"
  })
  void aUnitOnOneSizeOfASectionCountsForBoth(String text, double first, double second)
      throws Exception {
    RackFile file = readText(SMALLEST, "timber.frame.section=" + text);

    assertEquals(
        new Section(Length.roundedMm(first), Length.roundedMm(second)),
        file.timber().frame().section().value());
  }

  @ParameterizedTest
  @CsvSource({
    "3..20, 3, 20",
    "3 .. 20, 3, 20",
    "0..1 cm, 0, 10",
    "1.5..2.5, 1.5, 2.5",
    "1/2..1 in, 12.7, 25.4"
  })
  void rangesRunFromOneLengthToAnother(String text, double from, double to) throws Exception {
    RackFile file = readText(SMALLEST, "slats.gap-range=" + text);

    assertEquals(
        new RackFile.Range(Length.roundedMm(from), Length.roundedMm(to)),
        file.slats().gapRange().get().value());
  }

  @Test
  void stretchesToAvoidAreSorted() throws Exception {
    String board = "{ length: 980, width: 92, thickness: 16, avoid: [ 480..530, 0..25 ] }";
    RackFile file = readText(SMALLEST, "timber.slats.boards=[ " + board + " ]");

    assertEquals(
        List.of(
            new RackFile.Range(Length.ZERO, Length.mm(25)),
            new RackFile.Range(Length.mm(480), Length.mm(530))),
        file.timber().slats().boards().get(0).value().avoid());
  }

  @Test
  void aSettingTakesThePlaceOfWhatTheFileSays() throws Exception {
    RackFile file =
        read(
            "every-key.yaml",
            "rack.upright=1400",
            "rack.openings[1].clear=even",
            "rack.openings[3]=90",
            "rack.upright=1450");

    Place place = new Place("--set rack.upright=1450", 0, 0);
    assertEquals(new Given<>(Length.mm(1450), "rack.upright", place), file.rack().upright().get());
    List<RackFile.Opening> openings = file.rack().openings().get().value();
    assertEquals(new RackFile.Clear.Even(), openings.get(1).clear().value());
    assertEquals(3, openings.get(1).count());
    assertEquals(new RackFile.Clear.Fixed(Length.mm(90)), openings.get(3).clear().value());
  }

  @Test
  void aSettingMayBringListsGroupsAndKeysThatTheFileLacks() throws Exception {
    RackFile file =
        readText(
            "slatwright: 1\ntimber: { slats: { section: 18 x 95 } }\n",
            "title=Ware rack",
            "timber.frame.section=44 x 44",
            "rack.openings=[{clear: even, count: 2}]",
            "shop.cutter={process: laser, kerf: 0.15}",
            "holds[0]={name: pot, width: 200, depth: 200, height: 250}");

    assertEquals("Ware rack", file.title().value());
    assertEquals(2, file.rack().openings().get().value().get(0).count());
    assertTrue(file.shop().cutter().get() instanceof RackFile.Cutter.Laser);
    assertEquals("pot", file.holds().get(0).name());
  }

  @Test
  void anEmptySettingLeavesTheKeyOut() throws Exception {
    RackFile file = read("every-key.yaml", "rack.upright=", "rack.openings[0]=", "joint=");

    assertEquals(Optional.empty(), file.rack().upright());
    assertEquals(3, file.rack().openings().get().value().size());
    assertEquals(Optional.empty(), file.joint().embedment());
  }

  @Test
  void theKeysGivenAreListedWithTheirPlacesInFileOrder() throws Exception {
    RackFile file =
        readText(
            SMALLEST + "rack:\n  openings: [ { clear: 300 } ]\n  foot: 100\n",
            "rack.openings[0].clear=200",
            "rack.upright=1500",
            "shop.kerf=3");

    assertEquals(
        List.of(
            "slatwright",
            "title",
            "timber",
            "timber.frame",
            "timber.frame.section",
            "timber.slats",
            "timber.slats.section",
            "rack",
            "rack.openings",
            "rack.foot",
            "rack.upright",
            "shop",
            "shop.kerf"),
        List.copyOf(file.keys().keySet()));
    assertEquals(new Place("rack.yaml", 6, 9), file.keys().get("rack.foot"));
    assertEquals(new Place("--set rack.upright=1500", 0, 0), file.keys().get("rack.upright"));
    assertThrows(UnsupportedOperationException.class, () -> file.keys().clear());
  }

  @Test
  void jsonIsReadAsWell() throws Exception {
    RackFile file =
        readText(
            """
            {
            \t"slatwright": 1,
            \t"title": "Seed-tray rack",
            \t"timber": {
            \t\t"frame": { "section": "44 x 44" },
            \t\t"slats": { "section": "18 x 95" }
            \t},
            \t"rack": { "upright": 1500, "foot": "10 cm", "openings": [300, {"clear": "even"}] }
            }
            """);

    assertEquals(Length.mm(1500), file.rack().upright().get().value());
    assertEquals(new Place("rack.yaml", 8, 23), file.rack().upright().get().place());
  }

  @ParameterizedTest
  @CsvSource({"'\r\n'", "'\r'", "'\n'"})
  void everySortOfLineBreakCountsLinesTheSame(String lineBreak) throws Exception {
    String text = (SMALLEST + "rack:\n  upright: 1500\n").replace("\n", lineBreak);

    assertEquals(new Place("rack.yaml", 5, 12), readText(text).rack().upright().get().place());
  }

  @Test
  void anAnchorRepeatsAValue() throws Exception {
    RackFile file = readText(SMALLEST + "rack: { openings: [ &o { clear: 300 }, *o, *o ] }\n");

    assertEquals(3, file.rack().openings().get().value().size());
  }

  @Test
  void aGroupWhoseKeysAreAllCommentedOutIsEmpty() throws Exception {
    assertEquals(
        Optional.empty(), readText(SMALLEST + "rack:\n  # upright: 1500\n").rack().upright());
  }

  @Test
  void oneShelfHasNoOpenings() throws Exception {
    RackFile file = readText(SMALLEST + "rack: { openings: [] }\n");

    assertEquals(List.of(), file.rack().openings().get().value());
  }

  static RackFile read(String resource, String... settings) throws RackFileException {
    byte[] bytes = text(resource).getBytes(StandardCharsets.UTF_8);
    return RackFileReader.read(bytes, resource, List.of(settings));
  }

  static String text(String resource) {
    return Resource.text(resource);
  }

  private static RackFile readText(String text, String... settings) throws RackFileException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return RackFileReader.read(bytes, "rack.yaml", List.of(settings));
  }
}
