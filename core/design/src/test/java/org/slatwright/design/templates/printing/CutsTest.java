package org.slatwright.design.templates.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CutsTest {

  private static final int OVERLAP = 10;

  @Test
  void whatHasRoomIsNotCut() {
    assertEquals(List.of(new Stretch(0, 199.5)), Cuts.of(199.5, 200, List.of(), List.of()));
  }

  /** ceil((length - overlap) / (most - overlap)): 1500 mm on 200 mm are 8 tiles. */
  @Test
  void withNothingToSpareThereAreAsFewPartsAsMayBe() {
    List<Stretch> parts = Cuts.of(1500, 200, List.of(), List.of());
    assertEquals(8, parts.size());
    assertEquals(new Stretch(0, 200), parts.get(0));
    assertEquals(new Stretch(190, 390), parts.get(1));
  }

  @Test
  void anOverlapLiesBesideADisc() {
    List<Stretch> parts = Cuts.of(300, 200, List.of(new Stretch(185, 195)), List.of());
    // 185 - 1 - 10 = 174 is the last cut before it.
    assertEquals(List.of(new Stretch(0, 184), new Stretch(174, 300)), parts);
  }

  @Test
  void aPartMoreIsBetterThanADiscOnASeam() {
    List<Stretch> parts = Cuts.of(380, 200, List.of(new Stretch(170, 210)), List.of());
    assertEquals(3, parts.size());
  }

  @Test
  void aCutRunsBesideTexts() {
    List<Stretch> texts = List.of(new Stretch(179, 195), new Stretch(170, 177));
    assertEquals(new Stretch(178, 300), Cuts.of(300, 200, List.of(), texts).get(1));
  }

  @Property(tries = 300)
  void partsFollowOneAnotherAndFit(
      @ForAll @DoubleRange(min = 20, max = 3000) double length,
      @ForAll @DoubleRange(min = 100, max = 400) double most,
      @ForAll("stretches") List<Stretch> discs,
      @ForAll("stretches") List<Stretch> texts) {
    List<Stretch> parts = Cuts.of(length, most, discs, texts);
    assertEquals(0, parts.get(0).from());
    assertEquals(length, parts.get(parts.size() - 1).to());
    for (int i = 0; i < parts.size(); i++) {
      assertTrue(parts.get(i).length() <= most, () -> parts + " within " + most);
      if (i > 0) {
        assertEquals(OVERLAP, parts.get(i - 1).to() - parts.get(i).from(), 1e-9);
        assertTrue(parts.get(i).to() > parts.get(i - 1).to() + 9);
      }
    }
  }

  /** Against every cutting that there is, tried one by one. */
  @Property(tries = 40)
  void noOtherCuttingIsBetter(
      @ForAll @DoubleRange(min = 100, max = 190) double length,
      @ForAll @DoubleRange(min = 100, max = 160) double most,
      @ForAll("near") List<Stretch> discs,
      @ForAll("near") List<Stretch> texts) {
    List<Stretch> parts = Cuts.of(length, most, discs, texts);
    int[] cuts = IntStream.range(1, parts.size()).map(i -> (int) parts.get(i).from()).toArray();
    double cost = 0;
    for (int cut : cuts) {
      cost += cost(cut, discs, texts);
    }
    assertEquals(best(0, length, most, discs, texts), cost, 1e-9);
  }

  private static double best(
      int from, double length, double most, List<Stretch> discs, List<Stretch> texts) {
    if (length - from <= most) {
      return 0;
    }
    double best = Double.MAX_VALUE;
    for (int cut = from + 20; cut + OVERLAP - from <= most && length - cut >= 30; cut++) {
      double cost = cost(cut, discs, texts) + best(cut, length, most, discs, texts);
      best = Math.min(best, cost);
    }
    return best;
  }

  /** A part more is one; a disc less is worth one and a half, a text less the least. */
  private static double cost(int cut, List<Stretch> discs, List<Stretch> texts) {
    long hit =
        discs.stream()
            .filter(disc -> disc.from() < cut + OVERLAP + 1 && disc.to() > cut - 1)
            .count();
    long split =
        texts.stream().filter(text -> text.from() - 1 < cut && cut < text.to() + 1).count();
    return 1 + 1.5 * hit + 1e-6 * split;
  }

  @Provide
  Arbitrary<List<Stretch>> stretches() {
    return stretches(3000);
  }

  @Provide
  Arbitrary<List<Stretch>> near() {
    return stretches(190);
  }

  private static Arbitrary<List<Stretch>> stretches(double most) {
    Arbitrary<Double> starts = Arbitraries.doubles().between(0, most);
    Arbitrary<Double> lengths = Arbitraries.doubles().between(1, 40);
    return starts
        .flatMap(start -> lengths.map(length -> new Stretch(start, start + length)))
        .list()
        .ofMaxSize(12);
  }
}
