package org.slatwright.exporter.stl;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Solid;

/**
 * A solid in the binary form of STL: 80 bytes of header, the number of triangles, and for each its
 * normal, its corners counter-clockwise and two bytes of nothing, all little-endian.
 *
 * <p>Source: 3D Systems, StereoLithography Interface Specification (1989), from memory. The header
 * must not start with {@code solid}, the mark of the other form.
 */
final class BinaryStl {

  private static final int HEADER = 80;
  private static final int TRIANGLE = 12 * Float.BYTES + Short.BYTES;

  private BinaryStl() {}

  static byte[] of(Solid solid) {
    int triangles = solid.triangles().size();
    ByteBuffer bytes = ByteBuffer.allocate(HEADER + Integer.BYTES + triangles * TRIANGLE);
    bytes.order(ByteOrder.LITTLE_ENDIAN);
    bytes.put("binary STL, unit mm".getBytes(StandardCharsets.US_ASCII)).position(HEADER);
    bytes.putInt(triangles);
    List<Vector> corners = solid.corners().stream().map(Vector::to).toList();
    for (Solid.Triangle triangle : solid.triangles()) {
      Vector a = corners.get(triangle.a());
      Vector b = corners.get(triangle.b());
      Vector c = corners.get(triangle.c());
      b.minus(a).cross(c.minus(a)).unit().put(bytes);
      a.put(bytes);
      b.put(bytes);
      c.put(bytes);
      bytes.putShort((short) 0);
    }
    return bytes.array();
  }

  /** In mm. */
  private record Vector(double x, double y, double z) {

    static Vector to(Point3 point) {
      return new Vector(point.x().inMm(), point.y().inMm(), point.z().inMm());
    }

    Vector minus(Vector other) {
      return new Vector(x - other.x, y - other.y, z - other.z);
    }

    Vector cross(Vector other) {
      return new Vector(
          y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    Vector unit() {
      double length = Math.sqrt(x * x + y * y + z * z);
      return new Vector(x / length, y / length, z / length);
    }

    void put(ByteBuffer bytes) {
      bytes.putFloat((float) x).putFloat((float) y).putFloat((float) z);
    }
  }
}
