package org.slatwright.design.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.design.mechanics.Moisture;

class SpeciesTest {

  /** Rounding of a coefficient to five decimals, and of the shrinkage to one. */
  private static final double ROUNDED = 0.000025;

  /** Shrinkage from green to oven-dry, radial and tangential: Wood Handbook, table 4-3. */
  @ParameterizedTest
  @CsvSource({
    "douglas-fir, 4.8, 7.6",
    "white fir, 3.3, 7.0",
    "loblolly pine, 4.8, 7.4",
    "western hemlock, 4.2, 7.8",
    "yellow-poplar, 4.6, 8.2",
    "white ash, 4.9, 7.8",
    "black walnut, 5.5, 7.8",
    "black cherry, 3.7, 7.1",
    "american beech, 5.5, 11.9",
    "yellow birch, 7.3, 9.5"
  })
  void movementFollowsFromThePublishedShrinkage(String name, double radial, double tangential) {
    Species species = Species.named(name).orElseThrow();

    assertEquals(Moisture.coefficient(radial), species.radial(), ROUNDED);
    assertEquals(Moisture.coefficient(tangential), species.tangential(), ROUNDED);
  }

  /** Pages of europeanwood.org and of a data sheet of beech: shrinkage as above. */
  @ParameterizedTest
  @CsvSource({"european oak, 4.3, 8.9, 702", "european beech, 5.7, 11.6, 710"})
  void europeanHardwoodsAreAsHeavyAndMoveAsPublished(
      String name, double radial, double tangential, double density) {
    Species species = Species.named(name).orElseThrow();

    assertEquals(Moisture.coefficient(radial), species.radial(), ROUNDED);
    assertEquals(Moisture.coefficient(tangential), species.tangential(), ROUNDED);
    assertEquals(density, species.density(12), 6);
  }

  /** Wood Handbook, table 5-3a at 12 %: rupture in kPa, elasticity in MPa. */
  @ParameterizedTest
  @CsvSource({
    "douglas-fir, 0.48, 85000, 13400",
    "ponderosa pine, 0.40, 65000, 8900",
    "western larch, 0.52, 90000, 12900",
    "white fir, 0.39, 68000, 10300",
    "white oak, 0.68, 105000, 12300",
    "white ash, 0.60, 106000, 12000",
    "sugar maple, 0.63, 109000, 12600"
  })
  void strengthIsThatOfTheHandbook(String name, double gravity, double kpa, double mpa) {
    Species species = Species.named(name).orElseThrow();

    assertEquals(gravity, species.gravity());
    assertEquals(kpa / 1000, species.bending());
    assertEquals(mpa, species.stiffness());
  }

  /** C. Bengtsson, Annals of Forest Science 58 (2001) 569: least and greatest, % per 1 %. */
  @Test
  void norwaySpruceMovesWithinWhatWasMeasured() {
    Species spruce = Species.named("norway spruce").orElseThrow();

    assertTrue(spruce.radial() > 0.0007 && spruce.radial() < 0.0028);
    assertTrue(spruce.tangential() > 0.0018 && spruce.tangential() < 0.0046);
  }

  /** As every table of shrinkage has it: Wood Handbook, chapter 4. */
  @Test
  void everySpeciesMovesMoreAlongTheRingsThanAcross() {
    assertTrue(Species.all().stream().allMatch(wood -> wood.tangential() > wood.radial()));
  }

  @ParameterizedTest
  @CsvSource({
    "Norway Spruce, norway spruce",
    "SPRUCE, norway spruce",
    "whitewood, norway spruce",
    "pine, scots pine",
    "redwood, scots pine",
    "douglas fir, douglas-fir",
    "Douglas-Fir, douglas-fir",
    "cedar, western redcedar",
    "oak, european oak",
    "beech, european beech",
    "maple, sugar maple",
    "larch, western larch",
    "Pinus sylvestris, scots pine"
  })
  void aSpeciesIsKnownByEveryNameItIsSoldUnder(String written, String name) {
    assertEquals(Optional.of(name), Species.named(written).map(Species::name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "plastic", "spruc", "pinewood"})
  void anyOtherNameIsUnknown(String written) {
    assertEquals(Optional.empty(), Species.named(written));
  }

  @Test
  void noNameMeansTwoSpecies() {
    List<String> names = Species.names();

    assertEquals(names.size(), new HashSet<>(names).size());
    for (Species species : Species.all()) {
      assertEquals(Optional.of(species), Species.named(species.name()));
      assertEquals(Optional.of(species), Species.named(species.botanical()));
    }
  }
}
