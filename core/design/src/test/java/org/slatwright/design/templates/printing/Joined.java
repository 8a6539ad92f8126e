package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.drawing.View;
import org.slatwright.design.drafting.PaperBox;

/** The tiles of a template laid back on one another, from what is drawn on the pages. */
final class Joined {

  /**
   * A tile where it belongs on the template.
   *
   * @param shown what its page shows of the template
   */
  record Back(Template.Tile tile, List<Figure> shown) {

    PaperBox window() {
      double left = tile.from().x();
      double bottom = tile.from().y();
      return new PaperBox(left, bottom, left + tile.widthMm(), bottom + tile.heightMm());
    }
  }

  private Joined() {}

  static List<Back> of(Template template, Templates templates) {
    return template.tiles().stream()
        .map(tile -> new Back(tile, back(tile, drawn(template, tile, templates))))
        .toList();
  }

  private static List<Figure> drawn(Template template, Template.Tile tile, Templates templates) {
    Sheet page = templates.pages().get(tile.page());
    String id =
        template.name().substring(template.name().lastIndexOf('/') + 1)
            + "-"
            + (tile.row() + 1)
            + "-"
            + (tile.column() + 1);
    View view =
        page.views().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    Figure.Cluster cluster = (Figure.Cluster) view.figures().get(0);
    if (!cluster.id().equals(id + "-template")) {
      throw new AssertionError("the first figure of " + id + " is " + cluster.id());
    }
    return cluster.figures();
  }

  /** Each turned back and moved, by the record of the tile alone. */
  private static List<Figure> back(Template.Tile tile, List<Figure> figures) {
    return Leaves.of(figures).map(figure -> back(tile, figure)).toList();
  }

  private static Figure back(Template.Tile tile, Figure figure) {
    double turn = tile.turned() ? -90 : 0;
    if (figure instanceof Figure.Polyline line) {
      return new Figure.Polyline(back(tile, line.points().stream()), line.closed(), line.line());
    } else if (figure instanceof Figure.Circle circle) {
      return new Figure.Circle(back(tile, circle.centre()), circle.radius(), circle.line());
    } else if (figure instanceof Figure.Arc arc) {
      return new Figure.Arc(
          back(tile, arc.centre()),
          arc.radius(),
          arc.startDegrees() + turn,
          arc.sweepDegrees(),
          arc.line());
    } else if (figure instanceof Figure.Fill fill) {
      return new Figure.Fill(back(tile, fill.points().stream()), fill.shade());
    }
    Figure.Text text = (Figure.Text) figure;
    return new Figure.Text(
        back(tile, text.at()), text.height(), text.text(), text.align(), text.degrees() + turn);
  }

  private static List<PaperPoint> back(Template.Tile tile, Stream<PaperPoint> points) {
    return points.map(point -> back(tile, point)).toList();
  }

  private static PaperPoint back(Template.Tile tile, PaperPoint point) {
    double dx = point.x() - tile.at().x();
    double dy = point.y() - tile.at().y();
    return tile.turned() ? tile.from().moved(dy, -dx) : tile.from().moved(dx, dy);
  }
}
