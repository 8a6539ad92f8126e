package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;

/** What the dimensions of a view say, read back from it. */
record Dimensions(List<Figure.Dimension> all) {

  private static final double ROUNDING = 1e-9;

  static Dimensions of(View view) {
    return new Dimensions(Inked.of(view.figures()).dimensions());
  }

  List<Length> values() {
    return all.stream().map(Figure.Dimension::value).toList();
  }

  /** Those whose own line is level. */
  Dimensions level() {
    return new Dimensions(all.stream().filter(each -> isLevel(line(each))).toList());
  }

  /** Those whose own line is upright. */
  Dimensions upright() {
    return new Dimensions(all.stream().filter(each -> !isLevel(line(each))).toList());
  }

  private static Figure.Polyline line(Figure.Dimension dimension) {
    return (Figure.Polyline) dimension.drawn().get(0);
  }

  private static boolean isLevel(Figure.Polyline line) {
    return Math.abs(line.points().get(0).y() - line.points().get(1).y()) < ROUNDING;
  }

  /** Links that follow one another on one line, chain by chain. */
  List<Dimensions> chains() {
    List<Dimensions> chains = new ArrayList<>();
    List<Figure.Dimension> chain = new ArrayList<>();
    for (Figure.Dimension each : all) {
      if (!chain.isEmpty() && !isOneLine(line(chain.get(chain.size() - 1)), line(each))) {
        chains.add(new Dimensions(chain));
        chain = new ArrayList<>();
      }
      chain.add(each);
    }
    if (!chain.isEmpty()) {
      chains.add(new Dimensions(chain));
    }
    return chains;
  }

  private static boolean isOneLine(Figure.Polyline one, Figure.Polyline other) {
    return isLevel(one)
        ? Math.abs(one.points().get(0).y() - other.points().get(0).y()) < ROUNDING
        : Math.abs(one.points().get(0).x() - other.points().get(0).x()) < ROUNDING;
  }

  Length total() {
    return values().stream().reduce(Length.ZERO, Length::plus);
  }

  /** Where the links of one chain end, from its start, which is one of them. */
  Set<Length> places() {
    Set<Length> places = new HashSet<>(Set.of(Length.ZERO));
    Length at = Length.ZERO;
    for (Length value : values()) {
      at = at.plus(value);
      places.add(at);
    }
    return places;
  }

  boolean isRepeated() {
    return all.stream().anyMatch(each -> each.text().contains("×"));
  }
}
