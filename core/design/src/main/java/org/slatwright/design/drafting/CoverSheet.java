package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.drafting.CoverFacts.Fact;
import org.slatwright.design.sizing.Rack;

/**
 * The cover of a plan: title, picture, what somebody asks first, and the caution. It has no number,
 * so that sheet 1 is the first to build from.
 */
final class CoverSheet {

  static final String NAME = "drawings/00-cover";
  static final String TITLE = "Cover";

  private static final double PAD = 12;
  private static final double GAP = 10;
  private static final double LETTERING = 3.5;
  private static final double LABEL_WIDTH = 24;
  private static final double BETWEEN_FACTS = 3.5;
  private static final double LYING_FACTS_WIDTH = 130;
  private static final List<Double> TITLE_LETTERING = List.of(10.0, 7.0, 5.0, 3.5);
  private static final int TITLE_LINES = 2;

  private final Rack rack;
  private final Assembly assembly;
  private final List<Fact> facts;
  private final List<String> cautions;
  private final SheetFrame frame;
  private final PaperBox room;

  /**
   * Of a rack.
   *
   * @param found what to know before all else, if anything
   */
  CoverSheet(Rack rack, Assembly assembly, Quantities quantities, Optional<String> found) {
    this.rack = rack;
    this.assembly = assembly;
    this.facts = CoverFacts.of(rack, assembly, quantities);
    this.cautions = new ArrayList<>(found.stream().toList());
    cautions.add(Notes.CAUTION);
    this.frame = SheetFrame.usual(rack.shop().paper());
    this.room =
        new PaperBox(frame.left(), frame.bottom(), frame.right(), frame.top()).grown(-PAD, -PAD);
  }

  Sheet sheet() {
    double titleHeight = titleLettering();
    List<String> title = Paragraph.wrap(rack.title(), titleHeight, room.width(), TITLE_LINES);
    List<String> foot =
        cautions.stream()
            .flatMap(text -> Paragraph.wrap(text, LETTERING, room.width()).stream())
            .toList();
    double titleBottom = room.top() - Paragraph.heightOf(title.size(), titleHeight);
    double footTop = room.bottom() + Paragraph.heightOf(foot.size(), LETTERING);
    double factsTop = footTop + GAP + factsHeight();
    PaperBox picture =
        frame.landscape()
            ? new PaperBox(
                room.left() + factsWidth() + GAP, footTop + GAP, room.right(), titleBottom - GAP)
            : new PaperBox(room.left(), factsTop + GAP, room.right(), titleBottom - GAP);
    List<View> views =
        List.of(
            frame.view(),
            text("title", "Title", Paragraph.draw(title, room.left(), room.top(), titleHeight)),
            new Pictorial(assembly, picture).view(),
            text("facts", "What it is", facts(factsTop)),
            text("cautions", "Caution", Paragraph.draw(foot, room.left(), footTop, LETTERING)));
    return new Sheet(NAME, TITLE, rack.shop().paper(), frame.landscape(), views);
  }

  private static View text(String id, String title, List<Figure> figures) {
    return new View(id, title, Optional.empty(), figures);
  }

  /** The largest lettering of ISO 3098 in which the title fits. */
  private double titleLettering() {
    return TITLE_LETTERING.stream()
        .filter(height -> Paragraph.wrap(rack.title(), height, room.width()).size() <= TITLE_LINES)
        .findFirst()
        .orElse(LETTERING);
  }

  private double factsWidth() {
    return frame.landscape() ? LYING_FACTS_WIDTH : room.width();
  }

  private double factsHeight() {
    return facts.stream().mapToDouble(fact -> factHeight(fact) + BETWEEN_FACTS).sum()
        - BETWEEN_FACTS;
  }

  private double factHeight(Fact fact) {
    return Paragraph.heightOf(lines(fact).size(), LETTERING);
  }

  private List<String> lines(Fact fact) {
    return fact.values().stream()
        .flatMap(text -> Paragraph.wrap(text, LETTERING, factsWidth() - LABEL_WIDTH).stream())
        .toList();
  }

  private List<Figure> facts(double top) {
    List<Figure> figures = new ArrayList<>();
    double y = top;
    for (Fact fact : facts) {
      figures.addAll(Paragraph.draw(List.of(fact.label()), room.left(), y, LETTERING));
      figures.addAll(Paragraph.draw(lines(fact), room.left() + LABEL_WIDTH, y, LETTERING));
      y -= factHeight(fact) + BETWEEN_FACTS;
    }
    return figures;
  }
}
