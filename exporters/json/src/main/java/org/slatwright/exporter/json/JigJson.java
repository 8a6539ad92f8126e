package org.slatwright.exporter.json;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plate;

/** The jig, and what a machine cuts: outlines of straight lines and true arcs. */
final class JigJson {

  private final JsonWriter json;

  JigJson(JsonWriter json) {
    this.json = json;
  }

  /** Writes the jig under {@code key}. */
  void write(String key, Jig jig) throws IOException {
    json.object(
        key,
        () -> {
          json.length("guideDiameter", jig.guideDiameter());
          json.length("guideDepth", jig.guideDepth());
          json.lengths("railEdgeToHoles", jig.railEdgeToHoles());
          json.length("clearance", jig.clearance());
          json.objects("plates", jig.plates(), this::plate);
          json.objects("placed", jig.placed(), this::placed);
          json.texts("use", jig.use());
        });
  }

  /** Writes the patterns under {@code key}. */
  void patterns(String key, List<Pattern> patterns) throws IOException {
    json.objects(key, patterns, this::pattern);
  }

  private void plate(Plate plate) throws IOException {
    json.text("mark", plate.mark());
    json.text("name", plate.name());
    json.whole("quantity", plate.quantity());
    json.length("thickness", plate.thickness());
    json.object("boundary", () -> outline(plate.boundary()));
    json.objects("openings", plate.openings(), this::outline);
    json.objects("bores", plate.bores(), this::outline);
  }

  private void placed(Jig.Placed placed) throws IOException {
    json.text("plate", placed.plate().mark());
    json.object("placement", () -> AssemblyJson.placement(json, placed.placement()));
  }

  private void pattern(Pattern pattern) throws IOException {
    json.text("name", pattern.name());
    json.text("title", pattern.title());
    json.objects("features", pattern.features(), this::feature);
    json.objects("labels", pattern.labels(), this::label);
    json.objects("engraved", pattern.engraved(), this::stroke);
  }

  private void stroke(Pattern.Stroke stroke) throws IOException {
    json.points("points", stroke.points());
  }

  private void feature(Pattern.Feature feature) throws IOException {
    json.name("operation", feature.operation());
    if (feature.depth().isPresent()) {
      json.length("depth", feature.depth().get());
    }
    json.object("outline", () -> outline(feature.outline()));
  }

  private void label(Pattern.Label label) throws IOException {
    json.point("at", label.at());
    json.length("height", label.height());
    json.text("text", label.text());
  }

  private void outline(Outline outline) throws IOException {
    if (outline instanceof Outline.Circle circle) {
      json.text("kind", "circle");
      json.point("centre", circle.centre());
      json.length("diameter", circle.diameter());
    } else {
      json.text("kind", "path");
      json.objects("edges", ((Outline.Path) outline).edges(), this::edge);
    }
  }

  private void edge(Outline.Edge edge) throws IOException {
    json.text("kind", edge instanceof Outline.Arc ? "arc" : "line");
    json.point("from", edge.from());
    json.point("to", edge.to());
    if (edge instanceof Outline.Arc arc) {
      json.point("centre", arc.centre());
      json.flag("counterClockwise", arc.counterClockwise());
    }
  }
}
