package org.slatwright.design.steps;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Step;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** A plan, asked for its steps. */
record Built(Plan plan) {

  /** A stand for bromeliads: metric, one bay, three shelves; its frame is 900 by 1200. */
  static final String BROMELIADS =
      """
      slatwright: 1
      title: Bromeliad stand
      timber:
        frame: { section: 50 x 50, species: norway spruce }
        slats: { section: 20 x 80 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 600
        rail-length: 800
        upright: 1200
        foot: 100
        openings: [ 400, { clear: even } ]
        top: 30
      slats: { per-shelf: 8 }
      load: { per-shelf: 12 kg }
      """;

  static Built of(String yaml, String... settings) {
    try {
      byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
      return new Built(Planner.undrawn(RackFileReader.read(bytes, "rack.yaml", List.of(settings))));
    } catch (RackFileException e) {
      throw new AssertionError(yaml, e);
    }
  }

  List<Step> steps() {
    return plan.work().steps();
  }

  List<String> ids() {
    return steps().stream().map(Step::id).toList();
  }

  Step step(String id) {
    return steps().stream()
        .filter(step -> step.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + id + " among " + ids()));
  }

  /** Whether the one comes before the other, and the other asks for it. */
  boolean isBefore(String one, String other) {
    return step(one).number() < step(other).number();
  }

  /** All that a step says, in the maker's unit. */
  String said(String id) {
    Step step = step(id);
    StringBuilder said = new StringBuilder(step.title());
    step.doing().forEach(wording -> said.append('\n').append(wording.in(plan.lengths())));
    return said.append('\n').append(step.check().in(plan.lengths())).toString();
  }
}
