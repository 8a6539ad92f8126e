package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.ShelfRow;

/** What holds of every rack whose slats are as wide and thick as their boards. */
class UnevenShelfPropertyTest {

  @Property(tries = 60)
  void everyRowFillsTheRail(@ForAll("racks") String yaml) throws Exception {
    Rack rack = Framed.of(yaml).rack();

    assertEquals(rack.shelves() * rack.slats().lengths().size(), rack.rows().size());
    for (ShelfRow row : rack.rows()) {
      Length slats =
          row.slats().stream().map(ShelfRow.Slat::width).reduce(Length.ZERO, Length::plus);
      Length gaps = row.gap().times(row.slats().size() - 1L);
      assertEquals(
          rack.rail().length(), row.frontMargin().plus(slats).plus(gaps).plus(row.backMargin()));
      assertFalse(row.gap().isNegative() || row.frontMargin().isNegative());
      assertFalse(row.backMargin().isLessThan(row.frontMargin()));
      assertTrue(
          row.slats().stream()
              .noneMatch(slat -> slat.thickness().isMoreThan(rack.slats().thickness())));
    }
    long sections = rack.rows().stream().flatMap(row -> row.slats().stream()).distinct().count();
    Statistics.label("slats")
        .collect(sections > 1 ? "of several sections" : "alike")
        .coverage(rows -> rows.check("of several sections").percentage(share -> share > 10));
  }

  @Property(tries = 60)
  void everyRowIsInAChainThatFillsTheRail(@ForAll("racks") String yaml) throws Exception {
    Rack rack = Framed.of(yaml).rack();

    List<Chain> chains =
        rack.chains().stream().filter(chain -> chain.name().startsWith("slat row")).toList();
    for (ShelfRow row : rack.rows()) {
      List<Length> widths = row.slats().stream().map(ShelfRow.Slat::width).toList();
      assertTrue(chains.stream().anyMatch(chain -> slats(chain).equals(widths)), row::toString);
    }
    chains.forEach(chain -> assertEquals(rack.rail().length(), chain.total()));
    assertEquals(chains.size(), chains.stream().map(Chain::name).distinct().count());
  }

  private static List<Length> slats(Chain chain) {
    return chain.links().stream()
        .filter(link -> link.name().equals("slat"))
        .map(Chain.Link::length)
        .toList();
  }

  @Property(tries = 60)
  void noTwoSlatsOfAShelfMeet(@ForAll("racks") String yaml) throws Exception {
    Framed rack = Framed.of(yaml);

    for (int shelf = 0; shelf < rack.rack().shelves(); shelf++) {
      List<Piece> slats = rack.slats(shelf);
      for (int i = 0; i < slats.size(); i++) {
        for (int j = 0; j < i; j++) {
          Box one = slats.get(i).box();
          Box other = slats.get(j).box();
          assertTrue(
              !one.low().y().isLessThan(other.high().y())
                  || !other.low().y().isLessThan(one.high().y())
                  || !one.low().x().isLessThan(other.high().x())
                  || !other.low().x().isLessThan(one.high().x()),
              slats.get(i).id() + " and " + slats.get(j).id());
        }
      }
    }
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.ofBoards();
  }
}
