package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Unit;

/** What holds for everything that is drawn on any sheet. */
final class Tidy {

  /** ISO 5457: 20 mm to the left, 10 mm elsewhere; from memory. */
  private static final double BINDING = 20;

  private static final double MARGIN = 10;

  /** ISO 3098 has 1.8 mm as its least height, which captions of the title block have; memory. */
  private static final double LEAST_CAPTION = 1.8;

  /** Our least height of everything else; ISO 3098, from memory. */
  private static final double LEAST_LETTERING = 2.5;

  /** ISO 5455 with the intermediate steps that it allows; from memory. */
  private static final Set<Integer> METRIC =
      Set.of(1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200);

  /** 3 in, 1 1/2 in, 1 in, 3/4 in … to the foot: inch practice, from memory. */
  private static final Set<Integer> INCH = Set.of(1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192);

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double ROUNDING = 1e-6;

  /** A text may come as near as that to a line: less than a line is wide. */
  private static final double TOUCH = 0.1;

  private final Sheet sheet;
  private final List<Inked.Words> words;
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Cover> covers = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();
  private int order;

  /** A straight piece of a line, and when it was drawn. */
  private record Stroke(Coordinate from, Coordinate to, int order) {

    Geometry within(Geometry box) {
      return FACTORY.createLineString(new Coordinate[] {from, to}).intersection(box);
    }
  }

  /** A filled patch that hides what was drawn before it. */
  private record Cover(Geometry patch, int order) {}

  private Tidy(Sheet sheet) {
    this.sheet = sheet;
    this.words = Inked.of(sheet).words();
    for (View view : sheet.views()) {
      assertTrue(ids.add(view.id()), () -> sheet.name() + ": two of " + view.id());
      if (!view.id().equals("frame")) {
        view.figures().forEach(this::add);
      }
    }
  }

  /** Everything below but the scales. */
  static void check(Sheet sheet) {
    Tidy tidy = new Tidy(sheet);
    tidy.assertInsideFrame();
    tidy.assertNoTextOnAnother();
    tidy.assertNoTextCrossed();
    tidy.assertLettering();
  }

  /** Of the lists for plans in that unit. */
  static void checkScales(Sheet sheet, Unit units) {
    for (View view : sheet.views()) {
      view.scale()
          .ifPresent(
              scale -> {
                assertEquals(1, scale.paper(), () -> sheet.name() + " " + scale);
                assertTrue(
                    units.metricOrInch(METRIC, INCH).contains(scale.real()),
                    () -> sheet.name() + ": " + scale + " is no scale of a drawing");
              });
    }
  }

  private void add(Figure figure) {
    order++;
    if (figure instanceof Figure.Cluster cluster) {
      assertTrue(ids.add(cluster.id()), () -> sheet.name() + ": two of " + cluster.id());
      cluster.figures().forEach(this::add);
    } else if (figure instanceof Figure.Dimension dimension) {
      dimension.drawn().forEach(this::add);
    } else if (figure instanceof Figure.Polyline line) {
      stroke(coordinates(line.points(), line.closed()));
    } else if (figure instanceof Figure.Circle circle) {
      stroke(arc(circle.centre(), circle.radius(), 0, 360));
    } else if (figure instanceof Figure.Arc arc) {
      stroke(arc(arc.centre(), arc.radius(), arc.startDegrees(), arc.sweepDegrees()));
    } else if (figure instanceof Figure.Fill fill) {
      Coordinate[] ring = coordinates(fill.points(), true).toArray(new Coordinate[0]);
      covers.add(new Cover(FACTORY.createPolygon(ring), order));
    }
  }

  private void stroke(List<Coordinate> points) {
    for (int i = 1; i < points.size(); i++) {
      strokes.add(new Stroke(points.get(i - 1), points.get(i), order));
    }
  }

  private static List<Coordinate> coordinates(List<PaperPoint> points, boolean closed) {
    List<Coordinate> coordinates = new ArrayList<>();
    points.forEach(point -> coordinates.add(new Coordinate(point.x(), point.y())));
    if (closed) {
      coordinates.add(coordinates.get(0));
    }
    return coordinates;
  }

  private static List<Coordinate> arc(PaperPoint centre, double radius, double from, double sweep) {
    return IntStream.rangeClosed(0, 24)
        .mapToDouble(i -> Math.toRadians(from + sweep * i / 24))
        .mapToObj(
            turn ->
                new Coordinate(
                    centre.x() + radius * Math.cos(turn), centre.y() + radius * Math.sin(turn)))
        .toList();
  }

  private void assertInsideFrame() {
    Envelope frame =
        new Envelope(BINDING, sheet.widthMm() - MARGIN, MARGIN, sheet.heightMm() - MARGIN);
    for (Inked.Words text : words) {
      assertTrue(
          frame.contains(text.room()),
          () -> sheet.name() + ": '" + text.text() + "' leaves the frame at " + text.room());
    }
    frame.expandBy(ROUNDING);
    for (Stroke stroke : strokes) {
      assertTrue(
          frame.contains(stroke.from()) && frame.contains(stroke.to()),
          () -> sheet.name() + ": a line leaves the frame: " + stroke);
    }
  }

  private void assertNoTextOnAnother() {
    for (int i = 0; i < words.size(); i++) {
      for (int j = i + 1; j < words.size(); j++) {
        Inked.Words one = words.get(i);
        Inked.Words other = words.get(j);
        Envelope shared = one.room().intersection(other.room());
        assertTrue(
            shared.getWidth() < 0.05 || shared.getHeight() < 0.05,
            () ->
                sheet.name()
                    + ": '"
                    + one.text()
                    + "' and '"
                    + other.text()
                    + "' overlap at "
                    + shared);
      }
    }
  }

  /** Where a line lies under a later patch it does not show. */
  private void assertNoTextCrossed() {
    for (Inked.Words text : words) {
      Envelope room = new Envelope(text.room());
      room.expandBy(-TOUCH);
      Geometry box = FACTORY.toGeometry(room);
      for (Stroke stroke : strokes) {
        if (room.intersects(stroke.from(), stroke.to())) {
          assertTrue(
              isHidden(stroke, stroke.within(box)),
              () -> sheet.name() + ": a line crosses '" + text.text() + "' at " + text.room());
        }
      }
    }
  }

  private boolean isHidden(Stroke stroke, Geometry crossing) {
    return crossing.isEmpty()
        || covers.stream()
            .filter(cover -> cover.order() > stroke.order())
            .anyMatch(cover -> cover.patch().buffer(ROUNDING).contains(crossing));
  }

  private void assertLettering() {
    for (View view : sheet.views()) {
      double least = view.id().equals("title-block") ? LEAST_CAPTION : LEAST_LETTERING;
      for (Figure.Text text : texts(view.figures())) {
        assertTrue(text.height() >= least, () -> sheet.name() + ": '" + text + "' is too small");
      }
    }
  }

  private static List<Figure.Text> texts(List<Figure> figures) {
    List<Figure.Text> texts = new ArrayList<>();
    for (Figure figure : figures) {
      if (figure instanceof Figure.Text text) {
        texts.add(text);
      } else if (figure instanceof Figure.Cluster cluster) {
        texts.addAll(texts(cluster.figures()));
      } else if (figure instanceof Figure.Dimension dimension) {
        texts.addAll(texts(dimension.drawn()));
      }
    }
    return texts;
  }
}
