package org.slatwright.design.checks;

import static org.slatwright.design.checks.Caution.always;
import static org.slatwright.design.checks.Caution.when;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.wood.Climate;
import org.slatwright.design.wood.Species;

/** Reminds of what can hurt someone, as far as it concerns the rack. */
final class Cautions implements Rule {

  /** Of what the species tables hold: OSHA, wood dust (found in a university's fact sheet). */
  private static final List<String> SENSITISING =
      List.of("western redcedar", "northern red oak", "white oak", "european oak", "black walnut");

  private static final List<Caution> ALL =
      List.of(
          always(
              "codes",
              "Local codes and the advice of licensed trades come first; no engineer has approved"
                  + " this plan.",
              "common practice, no source"),
          new Caution(
              "load",
              rack -> true,
              rack ->
                  "Once no error and no warning is left, write the load on the rack: %s evenly on"
                          .formatted(rack.load().withUnit(rack.units()))
                      + " each shelf. Let nobody climb, stand or sit on it, and put nothing on top"
                      + " that tempts a child to climb.",
              "marking of EN 16122 (from memory); CPSC, Anchor It!"),
          always(
              "eyes and ears",
              "Wear eye protection for every cut, hole and nail, and ear protection at saw and"
                  + " router: they run at 90 to 105 dB(A), and hearing suffers from 85 up.",
              "ANSI Z87.1, EN 166, NIOSH REL (from memory)"),
          new Caution(
              "sawing and drilling",
              rack -> true,
              rack ->
                  "No gloves or loose sleeves at turning tools. Cut short parts off the long stick,"
                      + " with a stop block clear of the blade and a push stick within %s of it;"
                          .formatted(rack.units().metricOrInch("150 mm", "6 in"))
                      + " clamp what is drilled.",
              "29 CFR 1910.213 and common practice (from memory)"),
          always(
              "dust",
              "Extract wood dust where it arises and wear a P2 or N95 mask or better: at most 1"
                  + " mg/m³ in the air. Fine dust burns explosively: no sparks near the extractor.",
              "NIOSH REL; mask and NFPA 664 from memory"),
          when(
              rack -> anyTimber(rack, wood -> wood.kind() == Species.Kind.HARDWOOD),
              "hardwood dust",
              "The dust of this wood can cause cancer of the nose: a mask even for little work.",
              "ACGIH A1 (oak, beech); IARC vol. 100C (from memory)"),
          when(
              rack -> anyTimber(rack, wood -> SENSITISING.contains(wood.name())),
              "sensitisers",
              "The dust of this wood can make skin and lungs allergic: cover arms, extract, and stop"
                  + " at a rash or a wheeze.",
              "OSHA, wood dust; ACGIH 0.5 mg/m³ for western redcedar"),
          when(
              rack -> rack.fixing().kind() == Fastener.Kind.BRAD,
              "brads",
              "A brad can follow the grain and come out sideways: keep fingers a hand's breadth away"
                  + " from where it goes in.",
              "manuals of nailers (from memory)"),
          always(
              "finishing",
              "Rags with drying oil heat themselves and burn within hours: dry them spread flat"
                  + " outdoors, or keep them in water in a lidded metal can. Ventilate; for food only"
                  + " a finish that its maker calls food-safe.",
              "NFPA on oily rags; 21 CFR 175.300 (from memory)"),
          when(
              rack -> rack.climate() == Climate.OUTDOORS,
              "treated wood",
              "Wood treated against rot: no food on it, mask and gloves when cutting it, and never"
                  + " burn the offcuts.",
              "EPA (from memory)"),
          when(
              Rack::reclaimed,
              "pallets",
              "Of pallets take only wood stamped HT or DH. MB is methyl bromide: neither indoors nor"
                  + " cut nor burnt. No stamp, or stains, smell or spills: leave it.",
              "ISPM 15 (advice on MB and spills from memory)"),
          when(
              Rack::reclaimed,
              "old boards",
              "Pull or avoid every nail, and sweep with a metal detector before a blade meets one."
                  + " Paint from before 1978 may hold lead: have it tested, do not sand it.",
              "EPA, 40 CFR 745 (from memory)"),
          when(
              rack -> rack.shop().cutter().filter(Rack.Cutter.Laser.class::isInstance).isPresent(),
              "laser",
              "Never cut PVC, vinyl or unknown plastic (hydrogen chloride), never leave a running"
                  + " laser alone; extraction on, extinguisher at hand. Exterior or treated plywood"
                  + " chars and smokes more.",
              "rules of university and public workshops"),
          when(
              rack -> rack.shop().cutter().filter(Rack.Cutter.Router.class::isInstance).isPresent(),
              "router",
              "Clamp the sheet over its whole area and leave tabs, so that no freed plate is thrown;"
                  + " hands and sleeves off until the bit stands still.",
              "common practice, no source"));

  @Override
  public Stream<Finding> check(Design design) {
    return ALL.stream()
        .filter(caution -> caution.concerns().test(design.rack()))
        .map(caution -> caution.of(design.rack()));
  }

  private static boolean anyTimber(Rack rack, Predicate<Species> kind) {
    return kind.test(rack.timber().species()) || kind.test(rack.slatTimber().species());
  }
}
