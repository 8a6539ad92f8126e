package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.chain;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** What holds for every rack. */
class SizingPropertyTest {

  @Property(tries = 60)
  void everyChainAddsUpToThePartItMeasures(@ForAll("solvable") String yaml) throws Exception {
    Rack rack = Sizing.solve(read(yaml));

    assertSums(rack, "height", rack.upright().length());
    assertSums(rack, "depth", rack.frameDepth());
    assertSums(rack, "slat row", rack.rail().length());
    assertSums(rack, "dowel", rack.joint().length());
    Rack.SlatRow slats = rack.slats();
    Length frames = rack.upright().width().times(rack.frames());
    Length overall =
        rack.interiorWidth().times(rack.bays()).plus(frames).plus(slats.overhang().times(2));
    assertSums(rack, "width", overall);
    long open =
        overall.minus(slats.lengths().stream().reduce(Length.ZERO, Length::plus)).nanometres();
    assertTrue(
        open >= 0 && open < slats.lengths().size(),
        () -> "slats laid end to end reach from end to end, but for a nanometre a joint: " + open);
  }

  @Property(tries = 60)
  void shelvesEndWhereTheUprightsSay(@ForAll("solvable") String yaml) throws Exception {
    Rack rack = Sizing.solve(read(yaml));
    List<Length> undersides = rack.railUndersides();

    Length top =
        undersides
            .get(rack.shelves() - 1)
            .plus(rack.rail().height())
            .plus(rack.slats().thickness())
            .plus(rack.topAbove());

    assertEquals(rack.upright().length(), top);
    assertFalse(rack.foot().isNegative());
    assertFalse(rack.topAbove().isNegative());
    assertTrue(rack.openings().stream().allMatch(Length::isPositive));
  }

  @Property(tries = 60)
  void lengthsThatWereGivenStandAsTheyAre(@ForAll("solvable") String yaml) throws Exception {
    RackFile file = read(yaml);
    Rack rack = Sizing.solve(file);
    RackFile.Rack given = file.rack();

    assertKept(given.upright(), rack.upright().length());
    assertKept(given.foot(), rack.foot());
    assertKept(given.railLength(), rack.rail().length());
    assertKept(given.interiorWidth(), rack.interiorWidth());
    assertKept(file.joint().embedment(), rack.joint().embedment());
    assertKept(file.timber().dowel().diameter(), rack.joint().diameter());
    file.slats().perShelf().ifPresent(count -> assertEquals(count.value(), rack.slats().count()));
    if (rack.slats().count() > 1) {
      assertKept(file.slats().gap(), rack.slats().gap());
    }
    if (given.top().isPresent()) {
      boolean above = given.top().get().value() instanceof RackFile.Top.Above;
      assertEquals(
          above ? ((RackFile.Top.Above) given.top().get().value()).height() : Length.ZERO,
          rack.topAbove());
    }
    assertOpeningsKept(given, rack.openings());
  }

  @Property(tries = 100)
  void lengthsThatAreSolvedAreMultiplesOfTheIncrement(@ForAll("solvable") String yaml)
      throws Exception {
    RackFile file = read(yaml);
    Rack rack = Sizing.solve(file);
    boolean restHasAPlace = file.rack().foot().isEmpty() || file.rack().top().isEmpty();

    if (file.rack().upright().isEmpty() && restHasAPlace) {
      assertSnapped(rack, rack.upright().length());
    }
    evens(file, rack).stream()
        .skip(restHasAPlace ? 0 : 1)
        .forEach(even -> assertSnapped(rack, even));
    boolean widthIsFree = file.rack().interiorWidth().isEmpty();
    if (widthIsFree) {
      assertSnapped(rack, rack.interiorWidth());
    }
    if (file.rack().railLength().isEmpty()) {
      assertSnapped(rack, rack.rail().length());
    }
    boolean gapMaySnap =
        file.slats()
            .gapRange()
            .map(range -> range.value().from().snappedUp(rack.increment()))
            .map(multiple -> !multiple.isMoreThan(file.slats().gapRange().get().value().to()))
            .orElse(true);
    if (file.slats().gap().isEmpty() && gapMaySnap) {
      assertSnapped(rack, rack.slats().gap());
    }
    assertSnapped(rack, rack.slats().frontMargin());
    if (file.joint().embedment().isEmpty() && file.timber().dowel().length().isEmpty()) {
      assertSnapped(rack, rack.joint().embedment());
    }
  }

  @Property(tries = 60)
  void evenOpeningsDifferByLessThanTwoIncrements(@ForAll("solvable") String yaml) throws Exception {
    RackFile file = read(yaml);
    Rack rack = Sizing.solve(file);
    List<Length> evens = evens(file, rack);

    Length most = evens.stream().reduce(Length.ZERO, Length::max);
    Length least = evens.stream().reduce(most, Length::min);

    assertTrue(most.minus(least).isLessThan(rack.increment().times(2)));
  }

  @Property(tries = 60)
  void slatsAndDowelsKeepApart(@ForAll("solvable") String yaml) throws Exception {
    Rack rack = Sizing.solve(read(yaml));

    assertFalse(rack.slats().gap().isNegative());
    assertFalse(rack.slats().frontMargin().isNegative());
    assertFalse(rack.slats().backMargin().isNegative());
    assertTrue(rack.joint().holeDepth().times(2).isLessThan(rack.rail().length()));
    assertTrue(rack.joint().embedment().isLessThan(rack.joint().holeDepth()));
    List<Length> heights = rack.joint().heights();
    Length above = rack.rail().height().minus(heights.get(heights.size() - 1));
    Length unevenness = above.minus(heights.get(0)).abs();
    assertTrue(unevenness.nanometres() <= 1, "dowels lie symmetrically, to the nanometre");
  }

  @Property(tries = 200)
  void eachProposedChangeAloneGivesARackThatCloses(@ForAll("any") String yaml) throws Exception {
    List<Problem> problems = problems(yaml, List.of());
    for (Problem problem : problems) {
      for (Problem.Change change : problem.changes()) {
        List<Problem> left = problems(yaml, List.of(change.setting()));
        assertTrue(
            left.size() < problems.size() && places(problems).containsAll(places(left)),
            () -> change + " for " + problem + " leaves " + left);
      }
    }
  }

  /** However many problems there are: each step has fewer, so the last one closes. */
  @Property(tries = 100)
  void whoeverFollowsTheProposalsOneAfterAnotherComesToAnEnd(
      @ForAll("any") String yaml, @ForAll Random which) throws Exception {
    List<String> settings = new ArrayList<>();
    List<Problem> problems = problems(yaml, settings);
    for (List<Problem.Change> next = changes(problems); !next.isEmpty(); next = changes(problems)) {
      settings.add(next.get(which.nextInt(next.size())).setting());
      List<Problem> left = problems(yaml, settings);
      int before = problems.size();
      assertTrue(left.size() < before, () -> settings + " leaves " + left);
      problems = left;
    }
  }

  @Property(tries = 20)
  void theSameFileGivesTheSameRack(@ForAll("solvable") String yaml) throws Exception {
    assertEquals(Sizing.solve(read(yaml)), Sizing.solve(read(yaml)));
  }

  @Provide
  Arbitrary<String> any() {
    return RandomRacks.any();
  }

  @Provide
  Arbitrary<String> solvable() {
    return RandomRacks.solvable();
  }

  private static RackFile read(String yaml) throws RackFileException {
    return read(yaml, List.of());
  }

  private static RackFile read(String yaml, List<String> settings) throws RackFileException {
    return RackFileReader.read(yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", settings);
  }

  private static List<Problem> problems(String yaml, List<String> settings) {
    try {
      Sizing.solve(read(yaml, settings));
      return List.of();
    } catch (RackFileException e) {
      return e.problems();
    }
  }

  private static List<Place> places(List<Problem> problems) {
    return problems.stream().map(Problem::place).toList();
  }

  private static List<Problem.Change> changes(List<Problem> problems) {
    return problems.stream().flatMap(problem -> problem.changes().stream()).toList();
  }

  /** The even openings from the floor up; all where the file gives none and holds nothing. */
  private static List<Length> evens(RackFile file, Rack rack) {
    Optional<List<RackFile.Opening>> given = file.rack().openings().map(Given::value);
    if (given.isEmpty()) {
      return file.rack().upright().isPresent() ? rack.openings() : List.of();
    }
    List<Boolean> even =
        given.get().stream()
            .flatMap(
                opening ->
                    Collections.nCopies(
                        opening.count(), opening.clear().value() instanceof RackFile.Clear.Even)
                        .stream())
            .toList();
    return IntStream.range(0, even.size())
        .filter(even::get)
        .mapToObj(rack.openings()::get)
        .toList();
  }

  private static void assertSums(Rack rack, String chain, Length whole) {
    Length sum =
        chain(rack, chain).links().stream()
            .map(Chain.Link::length)
            .reduce(Length.ZERO, Length::plus);
    assertEquals(whole, sum, chain);
  }

  private static void assertKept(Optional<Given<Length>> given, Length solved) {
    given.ifPresent(length -> assertEquals(length.value(), solved, length.key()));
  }

  private static void assertSnapped(Rack rack, Length length) {
    assertTrue(length.isMultipleOf(rack.increment()), length + " by " + rack.increment());
  }

  private static void assertOpeningsKept(RackFile.Rack given, List<Length> solved) {
    int at = 0;
    for (RackFile.Opening opening : given.openings().map(Given::value).orElse(List.of())) {
      for (int i = 0; i < opening.count(); i++, at++) {
        if (opening.clear().value() instanceof RackFile.Clear.Fixed fixed) {
          assertEquals(fixed.height(), solved.get(at), opening.clear().key());
        }
      }
    }
  }
}
