package org.slatwright.api.model;

import java.util.List;

/**
 * A solid body bounded by triangles: closed, without a gap or an overlap, every edge shared by
 * exactly two of them. Round surfaces are flattened to chords.
 *
 * @param name the output name: {@code jig/printed-saddle}
 * @param title what it is, for a person
 * @param corners each different corner once; no coordinate negative
 * @param triangles its surface
 */
public record Solid(String name, String title, List<Point3> corners, List<Triangle> triangles) {

  public Solid {
    corners = List.copyOf(corners);
    triangles = List.copyOf(triangles);
    for (Triangle triangle : triangles) {
      if (Math.min(triangle.a(), Math.min(triangle.b(), triangle.c())) < 0
          || Math.max(triangle.a(), Math.max(triangle.b(), triangle.c())) >= corners.size()) {
        throw new IllegalArgumentException("no such corner: " + triangle);
      }
    }
  }

  /** Three of {@link Solid#corners()}, from 0, counter-clockwise seen from outside. */
  public record Triangle(int a, int b, int c) {}
}
