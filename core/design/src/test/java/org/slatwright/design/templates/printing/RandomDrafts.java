package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;
import org.slatwright.design.drafting.PaperBox;

/** Drafts with figures of every kind anywhere in them. */
final class RandomDrafts {

  private static final int FIGURES = 12;

  private final Random random;
  private final double width;
  private final double height;

  private RandomDrafts(Random random, double width, double height) {
    this.random = random;
    this.width = width;
    this.height = height;
  }

  static Arbitrary<Draft> any() {
    Arbitrary<Double> widths = Arbitraries.doubles().between(5, 450);
    Arbitrary<Double> heights = Arbitraries.doubles().between(5, 1600);
    return widths.flatMap(
        width ->
            heights.flatMap(
                height -> Arbitraries.randomValue(random -> draft(random, width, height))));
  }

  private static Draft draft(Random random, double width, double height) {
    return new RandomDrafts(random, Length.roundedMm(width).inMm(), Length.roundedMm(height).inMm())
        .draft();
  }

  private Draft draft() {
    List<Figure> figures = new ArrayList<>();
    List<Draft.Disc> discs = new ArrayList<>();
    for (int i = 0; i < FIGURES; i++) {
      PaperPoint centre = point();
      double most =
          Math.min(
              Math.min(centre.x(), width - centre.x()), Math.min(centre.y(), height - centre.y()));
      double radius = most * random.nextDouble();
      switch (random.nextInt(5)) {
        case 0 -> figures.add(polyline());
        case 1 -> {
          figures.add(new Figure.Circle(centre, radius, kind()));
          discs.add(new Draft.Disc(centre, Math.min(radius, 10)));
        }
        case 2 -> {
          double sweep = 720 * random.nextDouble() - 360;
          figures.add(new Figure.Arc(centre, radius, 400 * random.nextDouble(), sweep, kind()));
        }
        case 3 ->
            figures.add(new Figure.Fill(List.of(point(), point(), point()), Figure.Shade.TINT));
        default -> addText(figures, centre, i);
      }
    }
    return new Draft(
        "templates/any",
        "anything",
        List.of("Lay it on."),
        Length.roundedMm(width),
        Length.roundedMm(height),
        List.of(new Figure.Cluster("all", "all", figures)),
        discs);
  }

  private Figure polyline() {
    List<PaperPoint> points = new ArrayList<>();
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      points.add(point());
    }
    return new Figure.Polyline(points, random.nextBoolean(), kind());
  }

  private void addText(List<Figure> figures, PaperPoint at, int index) {
    Align align = Align.values()[random.nextInt(Align.values().length)];
    double degrees = 90 * random.nextInt(4);
    Figure.Text text = new Figure.Text(at, 2.5, "text " + index, align, degrees);
    if (new PaperBox(0, 0, width, height).contains(TextRoom.of(text))) {
      figures.add(text);
    }
  }

  private LineKind kind() {
    return LineKind.values()[random.nextInt(LineKind.values().length)];
  }

  private PaperPoint point() {
    return new PaperPoint(coordinate(width), coordinate(height));
  }

  /** Often on the edge, where clipping is most at risk. */
  private double coordinate(double most) {
    return switch (random.nextInt(8)) {
      case 0 -> 0;
      case 1 -> most;
      default -> most * random.nextDouble();
    };
  }
}
