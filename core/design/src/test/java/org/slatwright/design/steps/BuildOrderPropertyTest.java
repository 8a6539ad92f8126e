package org.slatwright.design.steps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.Step;
import org.slatwright.design.sizing.RandomRacks;

/** What holds for the order of work of every rack. */
class BuildOrderPropertyTest {

  @Property(tries = 40)
  void everyPieceComesIntoItsPlaceOnce(@ForAll("racks") String yaml) {
    Built built = Built.of(yaml);

    List<String> placed = built.steps().stream().flatMap(s -> s.places().stream()).toList();

    assertEquals(
        built.plan().assembly().pieces().stream().map(Piece::id).sorted().toList(),
        placed.stream().sorted().toList());
  }

  @Property(tries = 40)
  void everyPieceIsCutBeforeItIsUsed(@ForAll("racks") String yaml) {
    Built built = Built.of(yaml);
    Map<String, Integer> quantities = new TreeMap<>();
    for (Part part : built.plan().assembly().parts()) {
      quantities.put(part.mark(), part.quantity());
    }

    Map<String, Integer> cut = new TreeMap<>();
    for (Step step : built.steps()) {
      boolean cuts = step.id().startsWith("cut-") && !step.id().equals("cut-blocks");
      for (Step.Parts parts : step.parts()) {
        if (cuts) {
          cut.merge(parts.mark(), parts.count(), Integer::sum);
        } else if (quantities.containsKey(parts.mark())) {
          assertTrue(cut.containsKey(parts.mark()), () -> step.title() + ": " + parts);
        }
      }
    }
    assertEquals(quantities, cut);
  }

  @Property(tries = 40)
  void everyStepNamesWhatThePlanHasAndEndsWithACheck(@ForAll("racks") String yaml) {
    Built built = Built.of(yaml);
    Set<String> marks =
        built.plan().assembly().parts().stream().map(Part::mark).collect(Collectors.toSet());
    built.plan().cutting().spares().stream().map(SparePiece::mark).forEach(marks::add);

    Set<String> ids = new HashSet<>();
    for (Step step : built.steps()) {
      assertTrue(ids.add(step.id()), step.id());
      assertEquals(ids.size(), step.number());
      assertTrue(step.after().stream().allMatch(other -> other < step.number()), step.id());
      assertTrue(step.work().count() > 0, step.id());
      assertFalse(step.doing().isEmpty(), step.id());
      assertFalse(step.check().words().isBlank(), step.id());
      assertFalse(built.said(step.id()).contains("{}"), step.id());
      step.parts().forEach(parts -> assertTrue(marks.contains(parts.mark()), parts::toString));
      assertEquals(
          step.parts().stream().map(Step.Parts::mark).distinct().count(), step.parts().size());
    }
  }

  /** The fixings of all shelves are those of the model; what is bought is what is driven. */
  @Property(tries = 40)
  void everyFixingIsDriven(@ForAll("racks") String yaml) {
    Built built = Built.of(yaml);
    String kind = built.plan().assembly().fasteners().get(0).kind().word();

    int driven =
        built.steps().stream()
            .flatMap(step -> step.supplies().stream())
            .filter(supply -> supply.words().matches("\\d+ " + kind + "s .*"))
            .mapToInt(supply -> Integer.parseInt(supply.words().split(" ")[0]))
            .sum();

    assertEquals(built.plan().assembly().fasteners().size(), driven);
  }

  @Provide
  Arbitrary<String> racks() {
    return Arbitraries.oneOf(RandomRacks.solvable(), RandomRacks.ofBoards());
  }
}
