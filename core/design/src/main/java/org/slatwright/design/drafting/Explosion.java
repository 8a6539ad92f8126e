package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;

/**
 * The parts of one bay drawn apart, all along the ways that they go together: of its two frames the
 * right one, which nothing stands before, with its uprights drawn off the rails and the dowels out
 * of both; the left one as it is glued up; and the slats lifted. Of more than two shelves the
 * lowest and the top one are shown, since the rest would only hide each other.
 *
 * @param bars uprights, rails and slats, none of which share space
 * @param dowels that are drawn out
 * @param mouths of holes where they face the front, flat: in the left frame the ends of its dowels
 * @param ways between two parts that go together, as long as they are apart
 */
record Explosion(List<Placed> bars, List<Placed> dowels, List<Box> mouths, List<Box> ways) {

  /**
   * One of so many parts of height, width and depth together is how far the parts are drawn apart:
   * the first that keeps the front of the open frame off the back of the other.
   */
  private static final List<Integer> APART = List.of(20, 16, 26);

  /** One of so many parts of that is how far a slat that runs on is drawn beyond its frame. */
  private static final int STUB = 4;

  /**
   * A piece and where it is drawn.
   *
   * @param cut whether it runs on to the right
   */
  record Placed(Piece piece, Box box, boolean cut) {}

  Explosion {
    bars = List.copyOf(bars);
    dowels = List.copyOf(dowels);
    mouths = List.copyOf(mouths);
    ways = List.copyOf(ways);
  }

  static Explosion of(Assembly assembly) {
    return new Builder(assembly).build();
  }

  /** The shelves that are shown, counted from 1 at the floor. */
  static List<Integer> shelves(Assembly assembly) {
    int count = (int) groups(assembly, Group.Kind.SHELF).count();
    return count == 1 ? List.of(1) : List.of(1, count);
  }

  private static Stream<Group> groups(Assembly assembly, Group.Kind kind) {
    return assembly.groups().stream().filter(group -> group.kind() == kind);
  }

  /** All that is drawn with lines. */
  Stream<Box> solids() {
    return Stream.concat(bars.stream(), dowels.stream()).map(Placed::box);
  }

  private static final class Builder {

    private final Assembly assembly;
    private final Group glued;
    private final Group open;
    private final List<Integer> shelves;
    private final Length apart;
    private final List<Placed> bars = new ArrayList<>();
    private final List<Placed> dowels = new ArrayList<>();
    private final List<Box> mouths = new ArrayList<>();
    private final List<Box> ways = new ArrayList<>();

    Builder(Assembly assembly) {
      List<Group> frames = groups(assembly, Group.Kind.FRAME).toList();
      this.assembly = assembly;
      this.glued = frames.get(0);
      this.open = frames.get(1);
      this.shelves = shelves(assembly);
      this.apart = apart();
    }

    private Length apart() {
      Box front = pieces(open, Role.UPRIGHT).get(0).box();
      Box back = pieces(glued, Role.UPRIGHT).get(1).box();
      Box bay = front.around(back);
      Length all = bay.size(Axis.X).plus(bay.size(Axis.Y)).plus(bay.size(Axis.Z));
      Length wide = front.size(Axis.X).plus(front.size(Axis.Y));
      // As wide as in the picture, where x runs to the right and y, backwards, as much.
      Length offset = bay.size(Axis.X).minus(bay.size(Axis.Y));
      return APART.stream()
          .map(all::dividedBy)
          .filter(apart -> !offset.minus(apart).abs().isLessThan(wide))
          .findFirst()
          .orElse(all.dividedBy(APART.get(0)));
    }

    Explosion build() {
      pieces(glued, Role.UPRIGHT).forEach(upright -> bar(upright, upright.box()));
      rails(glued).forEach(rail -> bar(rail, rail.box()));
      pieces(open, Role.UPRIGHT)
          .forEach(upright -> bar(upright, moved(upright.box(), outward(upright), apart)));
      rails(open).forEach(rail -> bar(rail, rail.box()));
      assembly.joints().stream()
          .filter(joint -> rails(open).contains(joint.rail()))
          .forEach(joint -> joint.pins().forEach(pin -> drawOut(joint, pin.dowel())));
      shelves.forEach(this::lift);
      return new Explosion(bars, dowels, mouths, ways);
    }

    private void bar(Piece piece, Box box) {
      bars.add(new Placed(piece, box, false));
      for (Hole hole : piece.part().holes()) {
        Bore bore = piece.bore(hole);
        if (hole.through() || bore.inward() == Direction.PLUS_Y) {
          Length half = bore.diameter().half();
          Length front = box.low().y();
          mouths.add(
              new Box(
                  new Point3(bore.mouth().x().minus(half), front, bore.mouth().z().minus(half)),
                  new Point3(bore.mouth().x().plus(half), front, bore.mouth().z().plus(half))));
        }
      }
    }

    /** The way from the rails of its frame to an upright. */
    private Direction outward(Piece upright) {
      Length rail = rails(open).get(0).box().low().y();
      return upright.box().low().y().isLessThan(rail) ? Direction.MINUS_Y : Direction.PLUS_Y;
    }

    private void drawOut(Joint joint, Piece dowel) {
      Direction outward = outward(joint.upright());
      Length length = dowel.part().shape().length();
      dowels.add(
          new Placed(dowel, moved(dowel.box(), outward, apart.times(2).plus(length)), false));
      boolean front = outward == Direction.MINUS_Y;
      Box upright = joint.upright().box();
      Length railEnd = front ? upright.high().y() : upright.low().y();
      Length outerFace = (front ? upright.low() : upright.high()).moved(outward, apart).y();
      Length x = middle(dowel.box(), Axis.X);
      Length z = middle(dowel.box(), Axis.Z);
      for (Length start : List.of(railEnd, outerFace)) {
        Point3 from = new Point3(x, start, z);
        ways.add(line(from, from.moved(outward, apart)));
      }
    }

    private void lift(int shelf) {
      Group slats = groups(assembly, Group.Kind.SHELF).toList().get(shelf - 1);
      Length frame = pieces(open, Role.UPRIGHT).get(0).box().high().x();
      Length end = frame.plus(apart.dividedBy(STUB));
      Length height = lift();
      for (Piece slat : slats.pieces()) {
        if (slat.box().low().x().isLessThan(rails(open).get(0).box().low().x())) {
          bars.add(cut(slat, moved(slat.box(), Direction.PLUS_Z, height), end));
          fastenersOf(slat)
              .forEach(
                  fastener -> {
                    Point3 on =
                        new Point3(fastener.head().x(), fastener.head().y(), slat.box().low().z());
                    ways.add(line(on, on.moved(Direction.PLUS_Z, height)));
                  });
        }
      }
    }

    private Stream<Fastener> fastenersOf(Piece slat) {
      List<Piece> rails = Stream.concat(rails(glued).stream(), rails(open).stream()).toList();
      return assembly.fasteners().stream()
          .filter(fastener -> fastener.through().equals(slat) && rails.contains(fastener.into()));
    }

    /** As far as the parts are apart elsewhere, but half as far as the next rails at the most. */
    private Length lift() {
      List<Piece> rails = rails(open);
      if (rails.size() == 1) {
        return apart;
      }
      Length top =
          assembly.pieces(Role.SLAT).stream()
              .map(slat -> slat.box().high().z())
              .min(Length::compareTo)
              .orElseThrow();
      return Length.min(apart, rails.get(1).box().low().z().minus(top).half());
    }

    private List<Piece> rails(Group frame) {
      List<Piece> rails = pieces(frame, Role.RAIL);
      return shelves.stream().map(shelf -> rails.get(shelf - 1)).toList();
    }

    private static List<Piece> pieces(Group frame, Role role) {
      return frame.pieces().stream().filter(piece -> piece.part().role() == role).toList();
    }

    private static Length middle(Box box, Axis axis) {
      return box.low().along(axis).plus(box.size(axis).half());
    }

    private static Box moved(Box box, Direction direction, Length by) {
      return new Box(box.low().moved(direction, by), box.high().moved(direction, by));
    }

    private static Box line(Point3 from, Point3 to) {
      return new Box(from, from).around(new Box(to, to));
    }

    private static Placed cut(Piece slat, Box box, Length end) {
      Length x = Length.min(box.high().x(), end);
      Box kept = new Box(box.low(), new Point3(x, box.high().y(), box.high().z()));
      return new Placed(slat, kept, !kept.equals(box));
    }
  }
}
