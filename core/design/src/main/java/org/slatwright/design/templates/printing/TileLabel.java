package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.Paragraph;

/**
 * The room of the words along the longer side of a tile, left of it or above it.
 *
 * @param upright whether they run up along its left side
 * @param room that lines break at, in mm
 * @param length of the longest line, in mm
 * @param lines how many there are at most
 */
record TileLabel(boolean upright, double room, double length, int lines) {

  /** The most that a label adds to a tile as long as a page. */
  static final double MOST_MM = 8;

  private static final double HEIGHT = 2;
  private static final double AIR = 1;

  /** Words beside a small tile may be longer than it is. */
  private static final double SHORTEST = 45;

  /** Tiles at least this long have two lines of label at most. */
  private static final double LONG = 100;

  private static final int FEW = 2;
  private static final int MANY = 6;

  static TileLabel beside(double width, double height, String words) {
    double side = Math.max(width, height);
    double room = Math.max(side, SHORTEST);
    List<String> lines = lines(words, room);
    double length =
        lines.stream().mapToDouble(line -> Lettering.width(line, HEIGHT)).max().orElse(0);
    return new TileLabel(height >= width, room, length, lines.size());
  }

  /** What it adds to the tile, in mm. */
  double thickness() {
    return Paragraph.heightOf(lines, HEIGHT) + AIR;
  }

  /**
   * The words beside a tile, from the lower left corner of both.
   *
   * @param width of both together
   * @param height of both together
   * @param turned whether they are then turned a quarter, so that words that run down come level
   */
  List<Figure> figures(String words, double width, double height, boolean turned) {
    List<String> set = lines(words.strip(), room);
    if (!upright) {
      return Paragraph.draw(set, 0, height, HEIGHT);
    }
    double thick = thickness() - AIR;
    return IntStream.range(0, set.size())
        .mapToObj(
            i -> {
              double down = HEIGHT + i * HEIGHT * Paragraph.LINE_SPACING;
              PaperPoint at =
                  turned ? new PaperPoint(thick - down, height) : new PaperPoint(down, 0);
              double degrees = turned ? -90 : 90;
              return (Figure) new Figure.Text(at, HEIGHT, set.get(i), Figure.Align.START, degrees);
            })
        .toList();
  }

  private static List<String> lines(String words, double room) {
    return Paragraph.wrap(words, HEIGHT, room, room < LONG ? MANY : FEW);
  }
}
