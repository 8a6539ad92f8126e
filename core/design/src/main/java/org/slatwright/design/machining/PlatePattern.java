package org.slatwright.design.machining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Pattern.Operation;
import org.slatwright.api.plan.Plate;

/** Draws one plate: engraved, bored, then opened, then cut free. */
final class PlatePattern {

  private PlatePattern() {}

  static Pattern of(Plate plate, LengthFormat lengths) {
    String title = plate.mark() + " " + plate.name();
    LabelBlock labels =
        new LabelBlock(
            List.of(
                title,
                plate.quantity() + " from " + lengths.withUnit(plate.thickness()) + " sheet",
                LabelBlock.NOMINAL));
    return new Pattern(
        Patterns.name("jig", plate.mark(), plate.name()),
        title,
        features(plate),
        labels.above(Extent.of(plate.boundary()).high().y()),
        PlateMark.of(plate));
  }

  /** As large as the plate is to be. */
  static List<Pattern.Feature> features(Plate plate) {
    return Stream.of(
            through(Operation.DRILL, plate.bores()),
            through(Operation.CUT_INSIDE, plate.openings()),
            through(Operation.CUT_OUTSIDE, List.of(plate.boundary())))
        .flatMap(steps -> steps)
        .toList();
  }

  private static Stream<Pattern.Feature> through(
      Operation operation, List<? extends Outline> outlines) {
    return outlines.stream()
        .map(outline -> new Pattern.Feature(operation, outline, Optional.empty()));
  }
}
