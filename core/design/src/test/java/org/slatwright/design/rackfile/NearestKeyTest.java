package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestKeyTest {

  private static final List<String> KEYS =
      List.of("bays", "interior-width", "rail-length", "upright", "foot", "openings", "top");

  @ParameterizedTest
  @CsvSource({
    "uprigth, upright",
    "upright, upright",
    "Upright, upright",
    "uprights, upright",
    "pright, upright",
    "interiorWidth, interior-width",
    "interior_width, interior-width",
    "inner-width, interior-width",
    "opening, openings",
    "bay, bays",
    "feet, foot"
  })
  void aSlipIsNearTheKeyThatWasMeant(String written, String meant) {
    assertEquals(Optional.of(meant), NearestKey.to(written, KEYS));
  }

  @ParameterizedTest
  @CsvSource({"colour", "shelves", "x", "length", "''"})
  void anotherWordIsNearNone(String written) {
    assertEquals(Optional.empty(), NearestKey.to(written, KEYS));
  }

  @Test
  void theNearestOfSeveralIsNamed() {
    assertEquals(Optional.of("gap"), NearestKey.to("gapp", List.of("gap-range", "gap", "tap")));
  }

  @Test
  void aWordWithoutEndIsCutShort() {
    assertEquals(Optional.empty(), NearestKey.to("u".repeat(1_000_000), KEYS));
  }
}
