package org.slatwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Template;

/**
 * A template of one column, laid together from the pages that some program drew of it as a maker
 * does: the edge of a tile, along its dashed line, lies on the level arms of the marks of the tile
 * above, and its upright arms on theirs.
 */
public final class JoinedStrip {

  /** From hole to hole, however far apart. */
  private static final double BOUND = 0.1;

  /** Two tiles both show this much. */
  private static final double OVERLAP = 10;

  private static final double SAME = 1e-6;

  private final Template template;
  private final IntFunction<SeenPage> pages;
  private final List<Hole> holes = new ArrayList<>();

  /**
   * A hole where it is found.
   *
   * @param place on the template
   * @param found on what was laid together
   */
  private record Hole(PaperPoint place, PaperPoint found) {}

  /**
   * Of a template.
   *
   * @param template of one column
   * @param pages gives a page by its number, from 0
   */
  public JoinedStrip(Template template, IntFunction<SeenPage> pages) {
    this.template = template;
    this.pages = pages;
    PaperPoint shift = new PaperPoint(0, 0);
    for (int row = 0; row < template.tiles().size(); row++) {
      if (row > 0) {
        shift = shift(row, shift);
      }
      addHoles(template.tiles().get(row), shift);
    }
  }

  /** Whether a template is in one column and has holes to measure between. */
  public static boolean isStrip(Template template) {
    return template.tiles().stream().allMatch(tile -> tile.column() == 0)
        && circles(template).count() > 1;
  }

  /** From every hole to every other it is as far as it should be. */
  public void assertTrueToSize() {
    assertTrue(holes.size() >= circles(template).count(), "each hole is whole on a tile");
    for (Hole one : holes) {
      for (Hole other : holes) {
        assertEquals(
            distance(one.place(), other.place()),
            distance(one.found(), other.found()),
            BOUND,
            () -> template.name() + " from " + one.place() + " to " + other.place());
      }
    }
  }

  private static Stream<Figure.Circle> circles(Template template) {
    return SeenPage.circles(template.figures());
  }

  private void addHoles(Template.Tile tile, PaperPoint shift) {
    circles(template)
        .filter(circle -> isWhole(circle, tile))
        .forEach(circle -> holes.add(found(circle, tile, shift)));
  }

  private static boolean isWhole(Figure.Circle circle, Template.Tile tile) {
    double up = circle.centre().y() - tile.from().y();
    return up > circle.radius() && up < tile.heightMm() - circle.radius();
  }

  private Hole found(Figure.Circle circle, Template.Tile tile, PaperPoint shift) {
    PaperPoint onPage = tile.onPage(circle.centre());
    PaperPoint off =
        pages.apply(tile.page()).off(new Figure.Circle(onPage, circle.radius(), circle.line()));
    PaperPoint back = back(tile, onPage.moved(off.x(), off.y()));
    return new Hole(circle.centre(), back.moved(shift.x(), shift.y()));
  }

  /** How far a tile lies from its place, when the one above it lies so far from its own. */
  private PaperPoint shift(int row, PaperPoint above) {
    Template.Tile later = template.tiles().get(row);
    double seam = later.from().y() + later.heightMm();
    Predicate<SeenPage.Segment> onSeam = line -> Math.abs(line.from().y() - seam) < SAME;
    double arms = off(row - 1, line -> line.isLevel() && isSolid(line) && onSeam.test(line));
    double edge = off(row, line -> line.isLevel() && !isSolid(line) && onSeam.test(line));
    Predicate<SeenPage.Segment> below =
        line -> line.isUpright() && line.top() < seam && line.top() > seam - OVERLAP;
    return above.moved(off(row - 1, below) - off(row, below), arms - edge);
  }

  private static boolean isSolid(SeenPage.Segment line) {
    return line.kind().dashesMm().isEmpty();
  }

  /** On average, of some lines of the marks of a tile, as it lies on the template. */
  private double off(int row, Predicate<SeenPage.Segment> which) {
    Template.Tile tile = template.tiles().get(row);
    SeenPage page = pages.apply(tile.page());
    return marks(tile, page).stream()
        .flatMap(SeenPage::edges)
        .filter(line -> which.test(back(tile, line)))
        .map(line -> off(tile, page, line))
        .flatMapToDouble(OptionalDouble::stream)
        .average()
        .orElseThrow(() -> new AssertionError("no mark is seen on " + page.sheet().name()));
  }

  private List<Figure> marks(Template.Tile tile, SeenPage page) {
    String file = template.name().substring(template.name().lastIndexOf('/') + 1);
    String id = file + "-" + (tile.row() + 1) + "-1-marks";
    return page.sheet().views().stream()
        .flatMap(view -> view.figures().stream())
        .filter(figure -> figure instanceof Figure.Cluster cluster && cluster.id().equals(id))
        .flatMap(figure -> ((Figure.Cluster) figure).figures().stream())
        .toList();
  }

  /** What is level on the template is upright on the page where the tile is turned. */
  private static OptionalDouble off(Template.Tile tile, SeenPage page, SeenPage.Segment line) {
    OptionalDouble off = page.off(line);
    return off.isPresent() && tile.turned() && line.isUpright()
        ? OptionalDouble.of(-off.getAsDouble())
        : off;
  }

  private static SeenPage.Segment back(Template.Tile tile, SeenPage.Segment line) {
    return new SeenPage.Segment(back(tile, line.from()), back(tile, line.to()), line.kind());
  }

  private static PaperPoint back(Template.Tile tile, PaperPoint page) {
    double dx = page.x() - tile.at().x();
    double dy = page.y() - tile.at().y();
    return tile.turned() ? tile.from().moved(dy, -dx) : tile.from().moved(dx, dy);
  }

  private static double distance(PaperPoint one, PaperPoint other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }
}
