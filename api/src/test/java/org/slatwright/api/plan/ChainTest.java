package org.slatwright.api.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class ChainTest {

  @Test
  void linksAddUpToTheTotal() {
    Chain chain = new Chain("depth", List.of(link(44), link(320), link(44)), Length.mm(408));

    assertEquals(3, chain.links().size());
  }

  @Test
  void aChainThatDoesNotCloseIsRefusedAndSaysByWhat() {
    assertEquals(
        "depth chain adds up to 408 mm, not 410 mm",
        refusal("depth", List.of(link(44), link(320), link(44)), Length.mm(410)));
  }

  @Test
  void oneNanometreIsNotClosed() {
    assertEquals(
        "width chain adds up to 44 mm, not 44.000001 mm",
        refusal("width", List.of(link(44)), new Length(44_000_001)));
  }

  /** Sixty-four 64ths are an inch of 25.4 mm (exact since the 1959 yard and pound agreement). */
  @Test
  void sixtyFourSixtyFourthsAreAnInch() {
    Chain.Link sixtyFourth = new Chain.Link("64th", Length.inches(1, 64), false);

    new Chain("inch", Collections.nCopies(64, sixtyFourth), new Length(25_400_000));
  }

  private static String refusal(String name, List<Chain.Link> links, Length total) {
    return assertThrows(IllegalArgumentException.class, () -> new Chain(name, links, total))
        .getMessage();
  }

  private static Chain.Link link(long millimetres) {
    return new Chain.Link("link", Length.mm(millimetres), false);
  }
}
