package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.View;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.drafting.Paragraph;

/**
 * The words at the head of a page.
 *
 * @param title of the rack
 * @param paper the name of its size
 */
record PageHead(String title, String paper) {

  private static final double TITLE = 3.5;
  private static final double SENTENCE = 2.5;
  private static final double GAP = 5;

  /** On page {@code number} of {@code count}, counted from 1. */
  View view(PaperBox room, int number, int count) {
    String pages = "Templates, page " + number + " of " + count;
    double left = room.width() - GAP - Lettering.width(pages, TITLE);
    double line = room.top() - TITLE;
    String sentence =
        "Print on "
            + paper
            + " at 100 % (actual size), never fitted to the page. Measure rules and square first.";
    return new View(
        "head",
        "Head of the page",
        Optional.empty(),
        List.of(
            Paragraph.text(
                room.left(), line, TITLE, Paragraph.cut(title, TITLE, left), Figure.Align.START),
            Paragraph.text(room.right(), line, TITLE, pages, Figure.Align.END),
            Paragraph.text(
                room.left(), room.bottom() + 1, SENTENCE, sentence, Figure.Align.START)));
  }
}
