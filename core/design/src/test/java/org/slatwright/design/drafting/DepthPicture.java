package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.math.Vector3D;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Point3;

/**
 * A depth buffer: for each pixel of a part of the sheet the nearest face that was put into it, in
 * whatever order. It knows boxes and rods along y, and nothing of how lines are drawn.
 */
final class DepthPicture {

  /** In mm on paper. */
  static final double PIXEL = 0.2;

  private static final double NOTHING = Double.NEGATIVE_INFINITY;

  /** Ways on the picture in rack coordinates, each of length 1. */
  enum Eye {
    FRONT(new double[] {1, 0, 0}, new double[] {0, 0, 1}, new double[] {0, -1, 0}),
    LEFT(new double[] {0, -1, 0}, new double[] {0, 0, 1}, new double[] {-1, 0, 0}),
    RIGHT(new double[] {0, 1, 0}, new double[] {0, 0, 1}, new double[] {1, 0, 0}),
    TOP(new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 1}),
    /** ISO 5456-3, from memory: all three axes foreshortened alike. */
    ISOMETRIC(new double[] {1, 1, 0}, new double[] {-1, 1, 2}, new double[] {1, -1, 1});

    private final Vector3D right;
    private final Vector3D up;
    private final Vector3D toEye;

    Eye(double[] right, double[] up, double[] toEye) {
      this.right = vector(right).normalize();
      this.up = vector(up).normalize();
      this.toEye = vector(toEye).normalize();
    }

    Coordinate project(double[] point) {
      return new Coordinate(vector(point).dot(right), vector(point).dot(up));
    }

    double depth(double[] point) {
      return vector(point).dot(toEye);
    }
  }

  /** The paper: mm on it are {@code factor} times the picture's from {@code origin}. */
  record Place(Eye eye, double factor, Coordinate origin) {

    /** As large as boxes fit into the middle of {@code room}. */
    static Place fitted(Eye eye, List<Box> boxes, PaperBox room) {
      Coordinate low = new Coordinate(Double.MAX_VALUE, Double.MAX_VALUE);
      Coordinate high = new Coordinate(-Double.MAX_VALUE, -Double.MAX_VALUE);
      for (Box box : boxes) {
        for (double[] corner : corners(box)) {
          Coordinate at = eye.project(corner);
          low.setCoordinate(new Coordinate(Math.min(low.x, at.x), Math.min(low.y, at.y)));
          high.setCoordinate(new Coordinate(Math.max(high.x, at.x), Math.max(high.y, at.y)));
        }
      }
      double factor = Math.min(room.width() / (high.x - low.x), room.height() / (high.y - low.y));
      return new Place(
          eye,
          factor,
          new Coordinate(
              room.middleX() - factor * (low.x + high.x) / 2,
              room.middleY() - factor * (low.y + high.y) / 2));
    }

    Coordinate onPaper(double[] point) {
      Coordinate at = eye.project(point);
      return new Coordinate(origin.x + factor * at.x, origin.y + factor * at.y);
    }
  }

  private final Place place;
  private final PaperBox area;
  private final int columns;
  private final int rows;
  private final double[] depths;
  private final int[] faces;
  private int bodies;

  DepthPicture(Place place, PaperBox area) {
    this.place = place;
    this.area = area;
    this.columns = (int) Math.ceil(area.width() / PIXEL);
    this.rows = (int) Math.ceil(area.height() / PIXEL);
    this.depths = new double[columns * rows];
    this.faces = new int[columns * rows];
    Arrays.fill(depths, NOTHING);
  }

  /** Where the line of sight leaves a body, and through which of its faces. */
  private record Hit(double depth, int face) {
    static final Hit NONE = new Hit(NOTHING, 0);
  }

  private interface Body {
    Hit hit(double[] from, double[] step);
  }

  void addBox(Box box) {
    double[] low = at(box.low());
    double[] high = at(box.high());
    fill(box, (from, step) -> box(low, high, from, step));
  }

  void addRod(Box box) {
    double[] low = at(box.low());
    double[] high = at(box.high());
    fill(box, (from, step) -> rod(low, high, from, step));
  }

  private static Hit box(double[] low, double[] high, double[] from, double[] step) {
    double enters = NOTHING;
    double leaves = Double.MAX_VALUE;
    int face = 0;
    for (int axis = 0; axis < 3; axis++) {
      if (step[axis] == 0) {
        if (from[axis] <= low[axis] || from[axis] >= high[axis]) {
          return Hit.NONE;
        }
        continue;
      }
      double one = (low[axis] - from[axis]) / step[axis];
      double other = (high[axis] - from[axis]) / step[axis];
      enters = Math.max(enters, Math.min(one, other));
      if (Math.max(one, other) < leaves) {
        leaves = Math.max(one, other);
        face = axis;
      }
    }
    return enters < leaves ? new Hit(leaves, face) : Hit.NONE;
  }

  private static Hit rod(double[] low, double[] high, double[] from, double[] step) {
    double x = from[0] - (low[0] + high[0]) / 2;
    double z = from[2] - (low[2] + high[2]) / 2;
    double radius = (high[0] - low[0]) / 2;
    double a = step[0] * step[0] + step[2] * step[2];
    double b = x * step[0] + z * step[2];
    double root = b * b - a * (x * x + z * z - radius * radius);
    if (root <= 0) {
      return Hit.NONE;
    }
    double one = (low[1] - from[1]) / step[1];
    double other = (high[1] - from[1]) / step[1];
    double enters = Math.max((-b - Math.sqrt(root)) / a, Math.min(one, other));
    double round = (-b + Math.sqrt(root)) / a;
    double end = Math.max(one, other);
    return enters < Math.min(round, end)
        ? new Hit(Math.min(round, end), round < end ? 0 : 1)
        : Hit.NONE;
  }

  private void fill(Box box, Body body) {
    bodies++;
    Coordinate low = new Coordinate(Double.MAX_VALUE, Double.MAX_VALUE);
    Coordinate high = new Coordinate(-Double.MAX_VALUE, -Double.MAX_VALUE);
    for (double[] corner : corners(box)) {
      Coordinate at = place.onPaper(corner);
      low.setCoordinate(new Coordinate(Math.min(low.x, at.x), Math.min(low.y, at.y)));
      high.setCoordinate(new Coordinate(Math.max(high.x, at.x), Math.max(high.y, at.y)));
    }
    Eye eye = place.eye();
    double[] step = {eye.toEye.getX(), eye.toEye.getY(), eye.toEye.getZ()};
    for (int row = Math.max(0, row(low.y) - 1); row <= Math.min(rows - 1, row(high.y) + 1); row++) {
      for (int column = Math.max(0, column(low.x) - 1);
          column <= Math.min(columns - 1, column(high.x) + 1);
          column++) {
        double right = (area.left() + (column + 0.5) * PIXEL - place.origin().x) / place.factor();
        double up = (area.bottom() + (row + 0.5) * PIXEL - place.origin().y) / place.factor();
        double[] from = {
          right * eye.right.getX() + up * eye.up.getX(),
          right * eye.right.getY() + up * eye.up.getY(),
          right * eye.right.getZ() + up * eye.up.getZ()
        };
        Hit hit = body.hit(from, step);
        int pixel = row * columns + column;
        if (hit.depth() > depths[pixel]) {
          depths[pixel] = hit.depth();
          faces[pixel] = 3 * bodies + hit.face();
        }
      }
    }
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  int column(double x) {
    return (int) Math.floor((x - area.left()) / PIXEL);
  }

  int row(double y) {
    return (int) Math.floor((y - area.bottom()) / PIXEL);
  }

  /** Whether something nearer than a point is seen where the point lies. */
  boolean hides(double[] point) {
    Coordinate at = place.onPaper(point);
    return depths[row(at.y) * columns + column(at.x)] > place.eye().depth(point) + 1e-6;
  }

  /** Whether something nearer than that depth is seen in a pixel or beside it. */
  boolean isCoveredAround(int column, int row, double depth) {
    for (int r = row - 1; r <= row + 1; r++) {
      for (int c = column - 1; c <= column + 1; c++) {
        if (depths[r * columns + c] > depth + 1e-6) {
          return true;
        }
      }
    }
    return false;
  }

  /** The pixels that show another face than the next one to the right or above. */
  Pixels borders() {
    Pixels borders = new Pixels(columns, rows);
    for (int row = 0; row < rows - 1; row++) {
      for (int column = 0; column < columns - 1; column++) {
        int pixel = row * columns + column;
        if (faces[pixel] != faces[pixel + 1] || faces[pixel] != faces[pixel + columns]) {
          borders.set(column, row);
        }
      }
    }
    return borders;
  }

  /** The pixels that lines pass. */
  Pixels drawn(List<Coordinate[]> lines) {
    Pixels drawn = new Pixels(columns, rows);
    for (Coordinate[] line : lines) {
      along(line).forEach(at -> drawn.set(column(at.x), row(at.y)));
    }
    return drawn;
  }

  /** Places along a line, a fraction of a pixel apart. */
  static List<Coordinate> along(Coordinate[] line) {
    int steps = 1 + (int) Math.ceil(line[0].distance(line[1]) / PIXEL * 3);
    List<Coordinate> places = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double part = i / (double) steps;
      places.add(
          new Coordinate(
              line[0].x + part * (line[1].x - line[0].x),
              line[0].y + part * (line[1].y - line[0].y)));
    }
    return places;
  }

  static double[] at(Point3 point) {
    return new double[] {point.x().inMm(), point.y().inMm(), point.z().inMm()};
  }

  static List<double[]> corners(Box box) {
    double[] low = at(box.low());
    double[] high = at(box.high());
    List<double[]> corners = new ArrayList<>();
    for (int corner = 0; corner < 8; corner++) {
      corners.add(
          new double[] {
            (corner & 1) == 0 ? low[0] : high[0],
            (corner & 2) == 0 ? low[1] : high[1],
            (corner & 4) == 0 ? low[2] : high[2]
          });
    }
    return corners;
  }

  private static Vector3D vector(double[] of) {
    return Vector3D.create(of[0], of[1], of[2]);
  }

  /** Some of the pixels of a picture. */
  static final class Pixels {

    private final int columns;
    private final int rows;
    private final boolean[] set;

    Pixels(int columns, int rows) {
      this.columns = columns;
      this.rows = rows;
      this.set = new boolean[columns * rows];
    }

    void set(int column, int row) {
      set[row * columns + column] = true;
    }

    int count() {
      int count = 0;
      for (boolean one : set) {
        count += one ? 1 : 0;
      }
      return count;
    }

    /** Whether one of them is that pixel or beside it. */
    boolean isNear(int column, int row) {
      for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
        for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
          if (set[r * columns + c]) {
            return true;
          }
        }
      }
      return false;
    }

    /** Fails where one of them is nowhere near any of {@code others}. */
    void assertNear(Pixels others, String what) {
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < columns; column++) {
          if (set[row * columns + column] && !others.isNear(column, row)) {
            fail("pixel " + column + ", " + row + " " + what);
          }
        }
      }
    }
  }
}
