package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.Starter;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.SoldFixing;

/** What holds for brads and screws of every rack. */
class FixingPropertyTest {

  private static final Set<String> RULES =
      Set.of(
          "fixing-penetration",
          "fixing-withdrawal",
          "fixing-splitting",
          "sideways-push",
          "fastener-meets-dowel",
          "fasteners-meet",
          "fastener-comes-out");

  private static final List<String> FIXINGS =
      List.of(
          "{ kind: brad, length: 30 mm, diameter: 1.6 mm }",
          "{ kind: brad, per-end: 1 }",
          "{ kind: brad, per-end: 4 }",
          "{ kind: screw }",
          "{ kind: screw, diameter: 6 mm }",
          "{ kind: screw, length: 40 mm, diameter: 5 mm, per-end: 3 }");

  /** As they come, and with whatever kind of fixing alone. */
  @ParameterizedTest
  @MethodSource("files")
  void whatIsLeftOutIsChosenSoThatNothingWarns(String yaml) throws Exception {
    for (List<String> change :
        List.of(
            List.<String>of(),
            List.of("joint.fixing={kind: screw}"),
            List.of("joint.fixing={kind: brad}"),
            List.of("joint.fixing={kind: screw}", "rack.bays=2", "slats.run=per-bay"),
            List.of("joint.fixing={kind: brad}", "rack.bays=2", "slats.run=per-bay"))) {
      Design design = Designs.of(yaml, Advice.joined(List.of("rack.stands=anchored"), change));
      assertEquals(Set.of(), warned(design), change + " " + design.rack().fixing());
    }
  }

  static Stream<String> files() throws Exception {
    String readme = Files.readString(Path.of("../../README.md"));
    String shortest = readme.split("```yaml\n")[1].split("```")[0];
    try (Stream<Path> racks = Files.list(Path.of("../../examples/racks"))) {
      List<Path> files = racks.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
      assertEquals(5, files.size());
      List<String> all = new ArrayList<>(List.of(shortest, Starter.text()));
      for (Path file : files) {
        all.add(Files.readString(file));
      }
      return all.stream();
    }
  }

  /** Whoever follows one advice is not sent back by another, and can buy what it says. */
  @Property(tries = 60)
  void noAdviceOnFixingBreaksAnotherRule(
      @ForAll("racks") String yaml, @ForAll("fixings") String fixing) throws Exception {
    List<String> settings = List.of("joint.fixing=" + fixing);
    Design design;
    try {
      design = Designs.of(yaml, settings);
    } catch (RackFileException e) {
      return;
    }
    Set<String> before = warned(design);
    int followed = 0;
    for (Finding finding : Checks.of(design)) {
      for (List<String> change :
          before.contains(finding.rule()) ? Advice.changes(finding) : List.<List<String>>of()) {
        if (change.stream().allMatch(setting -> setting.startsWith("joint.fixing"))) {
          Design after = Designs.of(yaml, Advice.joined(settings, change));
          Set<String> left = new TreeSet<>(before);
          left.remove(finding.rule());
          assertTrue(left.containsAll(warned(after)), () -> change + " for " + finding);
          assertTrue(isSold(after.rack(), design.rack()), () -> after.rack().fixing().toString());
          followed++;
        }
      }
    }
    Statistics.label("followed")
        .collect(followed > 0)
        .coverage(any -> any.check(true).percentage(share -> share > 20));
  }

  private static boolean isSold(Rack rack, Rack before) {
    Rack.Fixing fixing = rack.fixing();
    boolean sameSize =
        fixing.length().equals(before.fixing().length())
            && fixing.diameter().equals(before.fixing().diameter());
    return sameSize
        || SoldFixing.of(fixing.kind(), rack.units()).stream()
            .anyMatch(
                sold ->
                    sold.diameter().equals(fixing.diameter())
                        && !fixing.length().isMoreThan(sold.longest())
                        && (fixing.length().equals(sold.longest())
                            || fixing
                                .length()
                                .snappedUp(SoldFixing.step(rack.units()))
                                .equals(fixing.length())));
  }

  @Provide
  Arbitrary<String> racks() {
    return RandomRacks.solvable().map(yaml -> yaml.replaceAll("\n  fixing: .*", ""));
  }

  @Provide
  Arbitrary<String> fixings() {
    return Arbitraries.of(FIXINGS);
  }

  private static Set<String> warned(Design design) {
    return Checks.of(design).stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(Finding::rule)
        .filter(RULES::contains)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
