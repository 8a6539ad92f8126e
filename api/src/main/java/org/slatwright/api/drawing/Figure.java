package org.slatwright.api.drawing;

import java.util.List;
import org.slatwright.api.measure.Length;

/** What a drawing is made of. Later figures lie on top of earlier ones. */
public sealed interface Figure {

  /**
   * Straight lines from point to point.
   *
   * @param points at least two
   * @param closed whether the last point joins the first
   */
  record Polyline(List<PaperPoint> points, boolean closed, LineKind line) implements Figure {
    public Polyline {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a polyline has at least two points");
      }
    }

    /** One straight line. */
    public static Polyline line(PaperPoint from, PaperPoint to, LineKind line) {
      return new Polyline(List.of(from, to), false, line);
    }
  }

  /** A full circle of {@code radius} mm. */
  record Circle(PaperPoint centre, double radius, LineKind line) implements Figure {}

  /**
   * Part of a circle of {@code radius} mm.
   *
   * @param startDegrees where it starts, counter-clockwise from the x axis
   * @param sweepDegrees how far it goes on from there; positive counter-clockwise, within ±360
   */
  record Arc(
      PaperPoint centre, double radius, double startDegrees, double sweepDegrees, LineKind line)
      implements Figure {}

  /** A filled polygon without an edge: an arrowhead, a shaded face. */
  record Fill(List<PaperPoint> points, Shade shade) implements Figure {
    public Fill {
      points = List.copyOf(points);
      if (points.size() < 3) {
        throw new IllegalArgumentException("a filled polygon has at least three points");
      }
    }
  }

  /** How dark a filled polygon is. */
  enum Shade {
    /** Solid, as the lines: arrowheads. */
    INK(0),
    /** A light tint that lines and lettering stay readable on. */
    TINT(0xe4),
    /** The colour of the paper: covers what lies beneath. */
    PAPER(0xff);

    private final int grey;

    Shade(int grey) {
      this.grey = grey;
    }

    /** How light it is on a screen, from 0, black, to 255, white. */
    public int grey() {
      return grey;
    }
  }

  /**
   * One line of lettering in {@link Lettering}'s font.
   *
   * @param at where the baseline meets the alignment
   * @param height of its capitals, in mm on paper
   * @param degrees turned counter-clockwise about {@code at}
   */
  record Text(PaperPoint at, double height, String text, Align align, double degrees)
      implements Figure {

    /** Where its baseline starts. */
    public PaperPoint start() {
      double angle = Math.toRadians(degrees);
      double back = -align.part() * Lettering.width(text, height);
      return at.moved(back * Math.cos(angle), back * Math.sin(angle));
    }
  }

  /** Which part of the lettering lies at its point. */
  enum Align {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double part;

    Align(double part) {
      this.part = part;
    }

    /** How much of a line of lettering comes before its point, from 0 to 1. */
    public double part() {
      return part;
    }
  }

  /**
   * A dimension: the exact length that it states, and how it is drawn.
   *
   * @param value what it measures
   * @param text what it says of it
   * @param drawn its lines, arrows and lettering
   */
  record Dimension(Length value, String text, List<Figure> drawn) implements Figure {
    public Dimension {
      drawn = List.copyOf(drawn);
    }
  }

  /**
   * Figures that belong together, such as all lines of one piece.
   *
   * @param id unique on its sheet
   * @param title for whoever cannot see the drawing: {@code upright U-1}
   */
  record Cluster(String id, String title, List<Figure> figures) implements Figure {
    public Cluster {
      figures = List.copyOf(figures);
    }
  }
}
