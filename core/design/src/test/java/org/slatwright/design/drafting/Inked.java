package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;

/**
 * What lies on a sheet, flat: every text with the room it takes, every straight line, every number.
 */
public record Inked(
    List<Words> words, List<Figure.Polyline> lines, List<Figure.Dimension> dimensions) {

  /** Descenders reach about a quarter of the capital height below the baseline in this font. */
  private static final double DESCENT = 0.25;

  /**
   * @param room around capitals and descenders
   */
  public record Words(String text, Envelope room, String view) {}

  /** What lies in one drawing. */
  public static Inked of(List<Figure> figures) {
    Inked inked = new Inked(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    figures.forEach(figure -> inked.add(figure, ""));
    return inked;
  }

  static Inked of(Sheet sheet) {
    Inked inked = new Inked(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (View view : sheet.views()) {
      view.figures().forEach(figure -> inked.add(figure, view.id()));
    }
    return inked;
  }

  private void add(Figure figure, String view) {
    if (figure instanceof Figure.Cluster cluster) {
      cluster.figures().forEach(inner -> add(inner, view));
    } else if (figure instanceof Figure.Dimension dimension) {
      dimensions.add(dimension);
      dimension.drawn().forEach(inner -> add(inner, view));
    } else if (figure instanceof Figure.Text text) {
      words.add(new Words(text.text(), room(text), view));
    } else if (figure instanceof Figure.Polyline line) {
      lines.add(line);
    }
  }

  private static Envelope room(Figure.Text text) {
    double width = Lettering.width(text.text(), text.height());
    double start =
        switch (text.align()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double turn = Math.toRadians(text.degrees());
    Envelope room = new Envelope();
    for (double along : new double[] {start, start + width}) {
      for (double up : new double[] {-DESCENT * text.height(), text.height()}) {
        room.expandToInclude(
            new Coordinate(
                text.at().x() + along * Math.cos(turn) - up * Math.sin(turn),
                text.at().y() + along * Math.sin(turn) + up * Math.cos(turn)));
      }
    }
    return room;
  }
}
