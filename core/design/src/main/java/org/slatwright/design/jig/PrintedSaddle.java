package org.slatwright.design.jig;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Solid;
import org.slatwright.design.outline.LayeredBody;
import org.slatwright.design.outline.LayeredBody.Layer;
import org.slatwright.design.outline.Outlines;
import org.slatwright.design.outline.Polygons;

/**
 * The saddle in one body and its register, for a 3-D printer. The body stands on the outside of its
 * guide, so that the guide holes are upright while it is printed and nothing needs support but the
 * upper side of the slot for the register.
 *
 * @param plates with the register to print
 */
record PrintedSaddle(Saddle saddle, SaddlePlates plates) {

  List<Solid> solids() {
    return List.of(
        LayeredBody.of(
            "jig/printed-saddle",
            "saddle of the drilling jig, to print; run the bit through its guide before use",
            layers()),
        LayeredBody.of(
            "jig/printed-register",
            "register of the printed drilling jig",
            List.of(new Layer(Polygons.of(plates.register().boundary()), saddle.sheet()))));
  }

  private List<Layer> layers() {
    Length play = saddle.allowances().printedPlay();
    Length underArm = underArm();
    Length slotLow = z(play.negated());
    Length slotHigh = z(saddle.sheet());
    List<Layer> layers = new ArrayList<>(guide());
    layers.add(new Layer(cheeks(Length.ZERO, saddle.height()), saddle.legEnd()));
    layers.add(
        new Layer(
            cheeks(underArm, saddle.height()), saddle.registerStart().minus(saddle.legEnd())));
    layers.add(
        new Layer(
            cheeks(underArm, slotLow).union(cheeks(slotHigh, saddle.height())),
            saddle.registerWidth().plus(play)));
    layers.add(new Layer(cheeks(underArm, saddle.height()), saddle.web()));
    return layers;
  }

  private Length underArm() {
    return z(saddle.web().plus(saddle.allowances().printedPlay()).negated());
  }

  /** With the seat of the bush outside, or bored alike all through. */
  private List<Layer> guide() {
    Layer bored = new Layer(guide(saddle.guideDiameter()), saddle.guideDepth());
    return saddle
        .bush()
        .map(
            bush ->
                List.of(
                    new Layer(guide(bush), saddle.guideDepth().minus(saddle.sheet())),
                    new Layer(bored.area(), saddle.sheet())))
        .orElse(List.of(bored));
  }

  private Geometry guide(Length bore) {
    Point2 middle = new Point2(saddle.guideWidth().half(), Length.ZERO);
    Stream<Outline> holes =
        saddle.holes().stream()
            .map(hole -> middle.moved(Length.ZERO, z(hole.negated())))
            .map(centre -> new Outline.Circle(centre, bore));
    Stream<Outline> window = saddle.windowInGuide().stream();
    Outline edge = Outlines.rectangle(Point2.ORIGIN, saddle.guideWidth(), saddle.guideHeight());
    return Polygons.of(edge, Stream.concat(holes, window).toList());
  }

  /** Both cheeks from {@code low} to {@code high} above their lower edge. */
  private Geometry cheeks(Length low, Length high) {
    Length left = saddle.web();
    Length right = left.plus(saddle.sheet()).plus(saddle.inside());
    return cheek(left, low, high).union(cheek(right, low, high));
  }

  private Polygon cheek(Length left, Length low, Length high) {
    return Polygons.of(Outlines.rectangle(new Point2(left, low), saddle.sheet(), high.minus(low)));
  }

  /** Height above the lower edge of what is {@code z} above the rail edge. */
  private Length z(Length z) {
    return z.minus(saddle.bottom());
  }
}
