package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Unit;

/** What every page carries so that whoever prints it can prove its scale. */
record PageChecks(PageLayout layout, Unit units) {

  View view() {
    CheckSquare square = new CheckSquare(units);
    PaperPoint across = new PaperPoint(layout.foot().left(), layout.foot().bottom());
    PaperPoint up = new PaperPoint(layout.side().right(), layout.side().bottom());
    PaperPoint corner = new PaperPoint(layout.corner().left(), layout.corner().bottom());
    return new View(
        "checks",
        "Rules and a square to check the scale by",
        Optional.empty(),
        List.of(
            cluster("check-rule-across", "check rule across", across, false, CheckRule.figures()),
            cluster("check-rule-up", "check rule up", up, true, CheckRule.figures()),
            cluster("check-square", "check square", corner, false, square.figures())));
  }

  private static Figure cluster(
      String id, String title, PaperPoint at, boolean turned, List<Figure> figures) {
    Laying laying = new Laying(new PaperPoint(0, 0), at, turned, "");
    return new Figure.Cluster(id, title, laying.figures(figures));
  }
}
