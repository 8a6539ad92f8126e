package org.slatwright.design.machining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Pattern.Operation;
import org.slatwright.design.outline.Outlines;

/** Draws the drilled faces of one part above one another, each within the edge of the sawn part. */
final class PartPattern {

  /** Between the lettering of one face and the edge of the next. */
  private static final Length FACE_GAP = Length.mm(10);

  private final Part part;
  private final LengthFormat lengths;
  private final List<Pattern.Feature> features = new ArrayList<>();
  private final List<Pattern.Label> labels = new ArrayList<>();
  private Length bottom = Length.ZERO;

  PartPattern(Part part, LengthFormat lengths) {
    this.part = part;
    this.lengths = lengths;
  }

  Pattern draw() {
    for (Face face : Face.values()) {
      List<Hole> holes = part.holes().stream().filter(hole -> hole.face() == face).toList();
      if (!holes.isEmpty()) {
        draw(FaceView.of(face, part.shape()), holes);
      }
    }
    String name = Patterns.name("parts", part.mark(), part.name());
    return new Pattern(
        name, part.mark() + " " + part.name() + ", holes", features, labels, List.of());
  }

  private void draw(FaceView view, List<Hole> holes) {
    holes.stream().map(hole -> drilled(view, hole)).forEach(features::add);
    Point2 corner = new Point2(Length.ZERO, bottom);
    Outline edge = Outlines.rectangle(corner, view.width(), view.height());
    features.add(new Pattern.Feature(Operation.REFERENCE, edge, Optional.empty()));
    LabelBlock block = new LabelBlock(words(view, holes));
    Length top = bottom.plus(view.height());
    labels.addAll(block.above(top));
    bottom = top.plus(block.height()).plus(FACE_GAP);
  }

  private Pattern.Feature drilled(FaceView view, Hole hole) {
    Outline circle =
        new Outline.Circle(view.centre(hole).moved(Length.ZERO, bottom), hole.diameter());
    Optional<Length> depth = hole.through() ? Optional.empty() : Optional.of(hole.depth());
    return new Pattern.Feature(Operation.DRILL, circle, depth);
  }

  private List<String> words(FaceView view, List<Hole> holes) {
    String pieces = part.quantity() == 1 ? "1 piece" : part.quantity() + " pieces";
    return Stream.concat(
            Stream.of(part.mark() + " " + part.name() + ", " + pieces, view.words()),
            alike(holes).entrySet().stream().map(kind -> kind.getValue() + ": " + kind.getKey()))
        .toList();
  }

  /** The names of the holes that are drilled alike, by how they are drilled. */
  private Map<String, String> alike(List<Hole> holes) {
    return holes.stream()
        .collect(
            Collectors.groupingBy(
                this::drilling,
                LinkedHashMap::new,
                Collectors.mapping(Hole::name, Collectors.joining(", "))));
  }

  private String drilling(Hole hole) {
    String depth = hole.through() ? "through" : lengths.withUnit(hole.depth()) + " deep";
    return "diameter " + lengths.withUnit(hole.diameter()) + ", " + depth;
  }
}
