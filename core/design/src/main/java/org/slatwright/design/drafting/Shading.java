package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;

/** What the parts of a board look like that are no part of the rack; told apart without colour. */
enum Shading {
  OFFCUT("offcut", ""),
  TRIM("trim", ", squared off the end"),
  AVOID("avoided", ": no piece may lie here"),
  SAWN("sawn", " away"),
  SPARE("spare piece", "");

  private static final double WIDE = 2.4;
  private static final double CLOSE = 1.2;

  private final String word;
  private final String more;

  Shading(String word, String more) {
    this.word = word;
    this.more = more;
  }

  /** In a sum. */
  String word() {
    return word;
  }

  /** In the key. */
  String words() {
    return word + more;
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
      case SAWN -> figures.add(box.fill(Figure.Shade.INK));
      case SPARE -> figures.add(box.fill(Figure.Shade.TINT));
    }
    figures.add(box.outline(LineKind.THIN));
    return figures;
  }
}
