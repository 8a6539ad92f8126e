package org.slatwright.exporter.dxf;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;

/**
 * What one file shows, in neither version's words.
 *
 * @param title what it is; any text at all
 * @param unit of the coordinates
 * @param extent the space that it takes
 * @param entities in the order of work, then what is only read
 */
record Drawing(String title, Unit unit, Extent extent, List<Entity> entities) {

  Drawing {
    entities = List.copyOf(entities);
  }

  /** The pattern, and above it a line to check the size by. */
  static Drawing of(Pattern pattern, Unit unit) {
    List<Entity> drawn =
        Stream.of(
                pattern.engraved().stream().map(Drawing::stroke),
                pattern.features().stream().map(Drawing::entity),
                pattern.labels().stream().map(Drawing::lettering))
            .flatMap(entities -> entities)
            // What is there twice, a machine cuts twice.
            .distinct()
            .toList();
    List<Entity> check = new SizeCheck(unit).above(extent(drawn));
    List<Entity> all = Stream.concat(drawn.stream(), check.stream()).toList();
    return new Drawing(pattern.title(), unit, extent(all), all);
  }

  /** The layers that occur, each once, in the order of {@link Layer}. */
  List<Layer> layers() {
    return entities.stream().map(Entity::layer).distinct().sorted().toList();
  }

  private static Entity entity(Pattern.Feature feature) {
    Layer layer = Layer.of(feature.operation());
    Outline outline = feature.outline();
    return outline instanceof Outline.Circle circle
        ? new Entity.Circle(layer, circle)
        : new Entity.Contour(layer, (Outline.Path) outline);
  }

  private static Entity stroke(Pattern.Stroke stroke) {
    return new Entity.Stroke(Layer.ENGRAVE, stroke.points());
  }

  /** Around the origin and all entities. */
  private static Extent extent(List<Entity> entities) {
    return entities.stream().map(Entity::extent).reduce(Extent.at(Point2.ORIGIN), Extent::around);
  }

  private static Entity lettering(Pattern.Label label) {
    return new Entity.Lettering(Layer.REFERENCE, label.at(), label.height(), label.text());
  }
}
