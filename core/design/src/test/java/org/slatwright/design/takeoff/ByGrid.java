package org.slatwright.design.takeoff;

import java.util.BitSet;
import java.util.List;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;

/**
 * The surface of a heap of boxes, counted another way: space is cut into cells along every face of
 * every box, and the walls between a full cell and an empty one are added up.
 */
record ByGrid(long[] xs, long[] ys, long[] zs, BitSet full) {

  static double squareMillimetres(List<Box> boxes) {
    ByGrid grid =
        new ByGrid(
            planes(boxes, Axis.X), planes(boxes, Axis.Y), planes(boxes, Axis.Z), new BitSet());
    boxes.forEach(grid::fill);
    return grid.walls();
  }

  private static long[] planes(List<Box> boxes, Axis axis) {
    return boxes.stream()
        .flatMap(box -> List.of(box.low(), box.high()).stream())
        .mapToLong(corner -> corner.along(axis).nanometres())
        .distinct()
        .sorted()
        .toArray();
  }

  private void fill(Box box) {
    for (int x = 0; x < xs.length - 1; x++) {
      for (int y = 0; y < ys.length - 1; y++) {
        for (int z = 0; z < zs.length - 1; z++) {
          if (within(xs, x, box, Axis.X)
              && within(ys, y, box, Axis.Y)
              && within(zs, z, box, Axis.Z)) {
            full.set(cell(x, y, z));
          }
        }
      }
    }
  }

  private static boolean within(long[] planes, int at, Box box, Axis axis) {
    return box.low().along(axis).nanometres() <= planes[at]
        && planes[at + 1] <= box.high().along(axis).nanometres();
  }

  private double walls() {
    double area = 0;
    for (int x = 0; x < xs.length; x++) {
      for (int y = 0; y < ys.length; y++) {
        for (int z = 0; z < zs.length; z++) {
          boolean here = isFull(x, y, z);
          area += here == isFull(x - 1, y, z) ? 0 : size(ys, y) * size(zs, z);
          area += here == isFull(x, y - 1, z) ? 0 : size(xs, x) * size(zs, z);
          area += here == isFull(x, y, z - 1) ? 0 : size(xs, x) * size(ys, y);
        }
      }
    }
    return area;
  }

  private boolean isFull(int x, int y, int z) {
    return x >= 0 && y >= 0 && z >= 0 && full.get(cell(x, y, z));
  }

  private int cell(int x, int y, int z) {
    return (x * ys.length + y) * zs.length + z;
  }

  private static double size(long[] planes, int at) {
    return (planes[at + 1] - planes[at]) / 1e6;
  }
}
