package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.wood.Species;
import org.slatwright.design.wood.StrengthClass;

class TimbersTest {

  private static final String HERBS =
      """
      slatwright: 1
      title: Herb-drying rack
      timber:
        frame: { section: 44 x 44 }
        slats: { section: 18 x 95 }
      rack: { interior-width: 580, rail-length: 320, upright: 1500 }
      """;

  private static final String KEY = "timber.frame.species";

  @ParameterizedTest
  @CsvSource({
    "norway spruce, norway spruce, C16",
    "Spruce, norway spruce, C16",
    "norway spruce C24, norway spruce, C24",
    "Douglas Fir c30, douglas-fir, C30",
    "oak, european oak, D18",
    "oak D30, european oak, D30",
    "yellow-poplar C22, yellow-poplar, C22",
    "yellow pine C18, loblolly pine, C18",
    "sitka C16, sitka spruce, C16",
    "' pine  C18 ', scots pine, C18"
  })
  void frameAndSlatsAreReckonedAsWritten(String written, String species, StrengthClass grade)
      throws Exception {
    Rack rack = solve(HERBS, KEY + "=" + written);

    assertEquals(species, rack.timber().species().name());
    assertEquals(grade, rack.timber().grade());
    assertEquals(rack.timber(), rack.slatTimber());
    assertTrue(warnings(rack).isEmpty(), warnings(rack).toString());
  }

  @Test
  void aStampedClassIsTakenWithoutAWord() throws Exception {
    assertEquals(List.of(), told(solve(HERBS, KEY + "=norway spruce C24")));
  }

  @Test
  void stockWithoutAStampIsReckonedWeakAndThatIsSaid() throws Exception {
    List<Finding> told = told(solve(HERBS, KEY + "=spruce"));

    assertEquals(1, told.size());
    assertEquals(
        "reckoned as norway spruce of strength class C16, as stock without a grade stamp is",
        told.get(0).message());
    assertEquals(
        "set timber.frame.species=norway spruce C24 if yours is stamped C24", told.get(0).advice());
  }

  @Test
  void theClassAdvisedIsTaken() throws Exception {
    String advice = told(solve(HERBS, KEY + "=oak")).get(0).advice();
    String species = advice.replaceFirst("set timber.frame.species=(.*) if .*", "$1");

    Rack rack = solve(HERBS, KEY + "=" + species);

    assertEquals(List.of(), told(rack));
    assertEquals(StrengthClass.D30, rack.timber().grade());
  }

  @Test
  void aSlipIsTakenAsTheNearestNameWithAWarning() throws Exception {
    Rack rack = solve(HERBS, KEY + "=dougals fir C24");

    assertEquals("douglas-fir", rack.timber().species().name());
    assertEquals(StrengthClass.C24, rack.timber().grade());
    assertEquals(
        List.of("no numbers are known of dougals fir: reckoned as douglas-fir"),
        warnings(rack).stream().map(Finding::message).toList());
    assertEquals(
        "if that is right, set timber.frame.species=douglas-fir", warnings(rack).get(0).advice());
  }

  @Test
  void aStrangeWoodIsReckonedAsSpruceWithAWarning() throws Exception {
    Rack rack = solve(HERBS, KEY + "=iroko");

    assertEquals("norway spruce", rack.timber().species().name());
    assertEquals("iroko", rack.species());
    assertEquals(
        List.of("no numbers are known of iroko: reckoned as norway spruce"),
        warnings(rack).stream().map(Finding::message).toList());
  }

  /** EN 338: C classes are those of softwoods, and of poplar; D classes those of hardwoods. */
  @ParameterizedTest
  @CsvSource({
    "norway spruce D40, C16, 'D40 is a strength class of hardwoods, and norway spruce is a softwood'",
    "pine D18, C16, 'D18 is a strength class of hardwoods, and scots pine is a softwood'",
    "oak C24, D18, 'C24 is a strength class of softwoods, and european oak is a hardwood'",
    "oak C14, C14, 'C14 is a strength class of softwoods, and european oak is a hardwood'",
  })
  void aClassOfOtherWoodsIsWarnedOfAndReckonedAsALowerOne(
      String written, StrengthClass grade, String message) throws Exception {
    Rack rack = solve(HERBS, KEY + "=" + written);

    assertEquals(grade, rack.timber().grade());
    assertEquals(
        List.of(message + ": reckoned as " + grade),
        warnings(rack).stream().map(Finding::message).toList());
    String right =
        warnings(rack).get(0).advice().replaceFirst("set timber.frame.species=(.*) if .*", "$1");
    assertEquals(List.of(), told(solve(HERBS, KEY + "=" + right)));
  }

  /** Pinus resinosa, whose numbers are not in the table, and no others than softwoods. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "red pine",
        "Red Pine",
        "yelow pine",
        "sugar pine",
        "white larch",
        "yellow fir",
        "black spruce",
        "red fir",
        "white cedar",
        "sitka spuce",
        "scotch pine"
      })
  void aNameOfASoftwoodIsNeverTakenForAHardwood(String written) throws Exception {
    Rack rack = solve(HERBS, KEY + "=" + written);

    assertEquals(Species.Kind.SOFTWOOD, rack.timber().species().kind());
    assertEquals(1, warnings(rack).size());
  }

  @Test
  void redPineIsNotKnown() throws Exception {
    assertEquals(
        List.of("no numbers are known of red pine: reckoned as norway spruce"),
        warnings(solve(HERBS, KEY + "=red pine")).stream().map(Finding::message).toList());
  }

  /** EN 338 has no C25. */
  @Test
  void aClassThatThereIsNotIsNoPartOfAName() throws Exception {
    assertEquals(1, warnings(solve(HERBS, KEY + "=norway spruce C25")).size());
  }

  @Test
  void reclaimedBoardsAreTheWeakestClass() throws Exception {
    Rack rack =
        solve(
            HERBS.replace(
                "{ section: 18 x 95 }",
                "{ boards: [ { length: 980, width: 76, thickness: 16, count: 40 } ] }"),
            KEY + "=norway spruce C24");

    assertEquals(StrengthClass.C24, rack.timber().grade());
    assertEquals(StrengthClass.C14, rack.slatTimber().grade());
  }

  private static List<Finding> told(Rack rack) {
    return rack.notes().stream().filter(note -> note.subject().equals(KEY)).toList();
  }

  private static List<Finding> warnings(Rack rack) {
    return told(rack).stream().filter(note -> note.severity() == Finding.Severity.WARNING).toList();
  }
}
