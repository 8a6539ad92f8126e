package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.slatwright.api.model.Parts.block;
import static org.slatwright.api.model.Parts.hole;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PartTest {

  @Test
  void holesAreFoundByName() {
    Part part = block(List.of(hole("a"), hole("b")), 2);

    assertEquals(hole("b"), part.hole("b"));
    assertRefused("part B has no hole c", () -> part.hole("c"));
  }

  @Test
  void twoHolesDoNotShareAName() {
    assertRefused("part B: two holes share a name", () -> block(List.of(hole("a"), hole("a")), 1));
  }

  @Test
  void thereIsAtLeastOneOfEveryPart() {
    assertRefused("part B: quantity must be >= 1, was 0", () -> block(List.of(), 0));
  }

  @Test
  void holesDoNotChangeOnceThePartIsMade() {
    List<Hole> holes = new ArrayList<>(List.of(hole("a")));
    Part part = block(holes, 1);

    holes.clear();

    assertEquals(List.of(hole("a")), part.holes());
  }

  @Test
  void anAssemblyHasAPiece() {
    assertRefused(
        "an assembly has at least one piece",
        () -> new Assembly(List.of(), List.of(), List.of(), List.of(), List.of()));
  }

  private static void assertRefused(String message, Runnable making) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, making::run).getMessage());
  }
}
