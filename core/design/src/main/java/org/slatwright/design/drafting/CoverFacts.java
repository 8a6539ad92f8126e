package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.framing.Marks;
import org.slatwright.design.sizing.Rack;

/** What somebody who takes up a plan asks first of the rack. */
final class CoverFacts {

  /**
   * One answer.
   *
   * @param values one a paragraph
   */
  record Fact(String label, List<String> values) {
    Fact {
      values = List.copyOf(values);
    }
  }

  private final Rack rack;
  private final LengthFormat lengths;

  private CoverFacts(Rack rack) {
    this.rack = rack;
    this.lengths = rack.lengths();
  }

  static List<Fact> of(Rack rack, Assembly assembly, Quantities quantities) {
    CoverFacts facts = new CoverFacts(rack);
    List<Fact> all = new ArrayList<>();
    all.add(new Fact("Size", List.of(facts.size(assembly.extent()))));
    all.add(new Fact("Shelves", List.of(facts.shelves())));
    List<String> holds = facts.holds();
    if (!holds.isEmpty()) {
      all.add(new Fact("Holds", holds));
    }
    String load = rack.load().withUnit(rack.units()) + ", spread evenly over each shelf";
    all.add(new Fact("Load", List.of(load)));
    all.add(new Fact("Timber", facts.timber()));
    String mass = quantities.mass().withUnit(rack.units()) + ", when empty";
    all.add(new Fact("Weight", List.of(mass)));
    return all;
  }

  private String size(Box extent) {
    return lengths.withUnit(extent.size(Axis.X))
        + " wide, "
        + lengths.withUnit(extent.size(Axis.Y))
        + " deep, "
        + lengths.withUnit(extent.size(Axis.Z))
        + " high";
  }

  private String shelves() {
    return rack.bays() == 1
        ? Integer.toString(rack.shelves())
        : rack.shelves() + ", over " + rack.bays() + " bays";
  }

  /** One kind of thing at a time, in one layer. */
  private List<String> holds() {
    Map<String, List<Fit>> byThing = new LinkedHashMap<>();
    rack.fits().stream()
        .filter(Fit::enough)
        .forEach(fit -> byThing.computeIfAbsent(fit.thing(), key -> new ArrayList<>()).add(fit));
    List<String> said = new ArrayList<>();
    byThing.values().forEach(fits -> said.add((said.isEmpty() ? "" : "or ") + holds(fits)));
    return said;
  }

  private String holds(List<Fit> shelves) {
    Fit fit = shelves.get(0);
    List<String> numbers = shelves.stream().map(Fit::shelf).map(String::valueOf).toList();
    String where =
        numbers.size() == rack.shelves()
            ? "each shelf"
            : (numbers.size() == 1 ? "shelf " : "shelves ") + Marks.of(numbers);
    return fit.across() * fit.deep()
        + " × "
        + fit.thing()
        + " on "
        + where
        + (rack.bays() == 1 ? "" : " of a bay");
  }

  private List<String> timber() {
    List<String> said = new ArrayList<>(List.of(rack.species()));
    said.add("frames " + lengths.section(rack.upright().width(), rack.upright().depth()));
    if (!rack.rail().width().equals(rack.upright().width())
        || !rack.rail().height().equals(rack.upright().depth())) {
      said.add("rails " + lengths.section(rack.rail().width(), rack.rail().height()));
    }
    said.add(
        rack.boardChoice().isPresent()
            ? "slats as wide as their boards"
            : "slats " + lengths.section(rack.slats().thickness(), rack.slats().width()));
    return said;
  }
}
