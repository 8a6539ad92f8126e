package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.DoubleStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/** The room that lettering takes. */
final class TextRoom {

  /** Descenders reach about a quarter of the capital height below the baseline in this font. */
  private static final double DESCENT = 0.25;

  private TextRoom() {}

  /** The upright box around capitals and descenders, however the text is turned. */
  static PaperBox of(Figure.Text text) {
    double width = Lettering.width(text.text(), text.height());
    double start =
        switch (text.align()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double low = -DESCENT * text.height();
    List<PaperPoint> corners =
        List.of(
            corner(text, start, low),
            corner(text, start + width, low),
            corner(text, start, text.height()),
            corner(text, start + width, text.height()));
    return new PaperBox(
        xs(corners).min().orElseThrow(),
        ys(corners).min().orElseThrow(),
        xs(corners).max().orElseThrow(),
        ys(corners).max().orElseThrow());
  }

  private static PaperPoint corner(Figure.Text text, double along, double up) {
    double turn = Math.toRadians(text.degrees());
    return text.at()
        .moved(
            along * Math.cos(turn) - up * Math.sin(turn),
            along * Math.sin(turn) + up * Math.cos(turn));
  }

  private static DoubleStream xs(List<PaperPoint> points) {
    return points.stream().mapToDouble(PaperPoint::x);
  }

  private static DoubleStream ys(List<PaperPoint> points) {
    return points.stream().mapToDouble(PaperPoint::y);
  }
}
