package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.boards.RowNeed;

/** The slats of each shelf from the front back, as printed: rows that are alike only once. */
record RowChains(Length rail, boolean gapGiven) {

  private static final String NAME = "slat row";

  /** What makes rows alike. */
  private record Lie(List<Length> widths, Length gap, Length frontMargin) {
    static Lie of(ShelfRow row) {
      return new Lie(
          row.slats().stream().map(ShelfRow.Slat::width).toList(), row.gap(), row.frontMargin());
    }
  }

  List<Chain> of(List<ShelfRow> rows) {
    Map<Lie, List<ShelfRow>> alike = new LinkedHashMap<>();
    rows.forEach(row -> alike.computeIfAbsent(Lie.of(row), lie -> new ArrayList<>()).add(row));
    RowNames names = RowNames.of(needs(rows));
    return alike.values().stream()
        .map(
            same ->
                chain(
                    same.get(0), alike.size() == 1 ? NAME : NAME + ", " + names.words(needs(same))))
        .toList();
  }

  private static List<RowNeed> needs(List<ShelfRow> rows) {
    return rows.stream().map(row -> new RowNeed(row.shelf(), row.run(), row.length())).toList();
  }

  private Chain chain(ShelfRow row, String name) {
    Links links = new Links().add("margin", Sized.solved(row.frontMargin()));
    for (int i = 0; i < row.slats().size(); i++) {
      if (i > 0) {
        links.add("gap", new Sized(row.gap(), !gapGiven));
      }
      links.add("slat", row.slats().get(i).width());
    }
    return links.add("margin", Sized.solved(row.backMargin())).closing(name, rail);
  }
}
