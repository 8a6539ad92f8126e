package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;

/** What the parts of a board look like that are no part of the rack; told apart without colour. */
enum Shading {
  OFFCUT("offcut"),
  TRIM("squared off the end"),
  AVOID("no piece may lie here"),
  SPARE("spare piece");

  private static final double WIDE = 2.4;
  private static final double CLOSE = 1.2;

  private final String word;

  Shading(String word) {
    this.word = word;
  }

  /** What the key says of it. */
  String word() {
    return word;
  }

  /** Over whatever lies beneath. */
  List<Figure> figures(PaperBox box) {
    List<Figure> figures = new ArrayList<>();
    figures.add(box.fill(Figure.Shade.PAPER));
    switch (this) {
      case OFFCUT -> figures.addAll(Hatch.rising(box, WIDE));
      case TRIM -> figures.addAll(Hatch.falling(box, CLOSE));
      case AVOID -> {
        figures.addAll(Hatch.rising(box, CLOSE));
        figures.addAll(Hatch.falling(box, CLOSE));
      }
      case SPARE -> figures.add(box.fill(Figure.Shade.TINT));
    }
    figures.add(box.outline(LineKind.THIN));
    return figures;
  }
}
