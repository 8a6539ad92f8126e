package org.slatwright.design.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.sizing.DowelSizes;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/** Changes of the dowels, each of which makes a rule hold and keeps enough wood around them. */
record JointRemedies(JointCase joint) {

  private static final String DIAMETER = "timber.dowel.diameter=";

  static JointRemedies of(Rack rack) {
    return new JointRemedies(JointCase.of(rack));
  }

  /** The thinnest usual dowel, thicker than now, as deep as our own rule says or as it is. */
  Optional<String> thickerDowel(Predicate<JointCase> holds) {
    return usual()
        .sorted(Comparator.naturalOrder())
        .filter(size -> size.isMoreThan(joint.diameter()))
        .map(size -> joint.withDowel(size, Length.max(joint.embedment(), usualDepth(size))))
        .filter(JointRemedies::isRoomy)
        .filter(holds)
        .findFirst()
        .map(this::dowel);
  }

  /** The thickest usual dowel, as deep as it is now. */
  Optional<String> otherDowel(Predicate<JointCase> holds) {
    return usual()
        .filter(size -> holds.test(joint.withDowel(size, joint.embedment())))
        .findFirst()
        .map(size -> DIAMETER + spelling().length(size));
  }

  /** Two dowels, as thick as now, or as thick as fit. */
  Optional<String> twoDowels(Predicate<JointCase> holds) {
    if (joint.count() > 1) {
      return Optional.empty();
    }
    JointCase two = joint.withCount(2);
    Stream<JointCase> thinner =
        usual()
            .filter(size -> size.isLessThan(joint.diameter()))
            .map(size -> two.withDowel(size, Length.min(joint.embedment(), usualDepth(size))));
    return Stream.concat(Stream.of(two), thinner)
        .filter(JointRemedies::isRoomy)
        .filter(holds)
        .findFirst()
        .map(found -> "joint.dowels=2 with " + dowel(found));
  }

  /**
   * The lowest rail, at most twice as high as now, that has room for two dowels as thick as now.
   */
  Optional<String> twoDowelsInAHigherRail(Predicate<JointCase> holds) {
    Length lowest = joint.diameter().times(6).snappedUp(joint.rack().increment().times(2));
    JointCase higher = joint.withCount(2).withHeight(lowest);
    boolean helps =
        joint.count() == 1
            && lowest.isMoreThan(joint.height())
            && !lowest.isMoreThan(joint.height().times(2))
            && isRoomy(higher)
            && holds.test(higher);
    return helps
        ? Optional.of(
            "timber.rails.section="
                + spelling().pair(joint.rack().rail().width(), "x", lowest)
                + " with joint.dowels=2 and "
                + dowel(higher))
        : Optional.empty();
  }

  /** The least depth in the rail, a multiple of the increment. */
  Optional<String> deeper(Predicate<JointCase> holds) {
    Length step = joint.rack().increment();
    return Stream.iterate(joint.embedment().plus(step).snappedDown(step), l -> l.plus(step))
        .takeWhile(this::isShortEnough)
        .filter(length -> holds.test(joint.withDowel(joint.diameter(), length)))
        .findFirst()
        .map(length -> "joint.embedment=" + spelling().length(length));
  }

  private boolean isShortEnough(Length embedment) {
    return fitsRail(joint.withDowel(joint.diameter(), embedment));
  }

  /** Enough wood around it, and between the holes from both ends of the rail. */
  private static boolean isRoomy(JointCase joint) {
    Rack rack = joint.rack();
    Length thinnest =
        Length.min(
            Length.min(rack.upright().width(), rack.upright().depth()),
            Length.min(rack.rail().width(), joint.height()));
    Length diameter = joint.diameter();
    return !diameter.times(2).isMoreThan(thinnest)
        && joint.leavesWoodInTheRail()
        && fitsRail(joint);
  }

  private static boolean fitsRail(JointCase joint) {
    Length hole = joint.embedment().plus(DowelSizes.glueRoom(joint.rack().units()));
    return !hole.times(2).plus(joint.diameter()).isMoreThan(joint.rack().rail().length());
  }

  private String dowel(JointCase found) {
    return DIAMETER
        + spelling().length(found.diameter())
        + " and joint.embedment="
        + spelling().length(found.embedment());
  }

  private Stream<Length> usual() {
    return DowelSizes.ofTheTrade(joint.rack().units()).stream();
  }

  private Length usualDepth(Length diameter) {
    return DowelSizes.embedment(diameter, joint.rack().increment());
  }

  private Spelling spelling() {
    return new Spelling(joint.rack().units());
  }

  /** Any one of them. */
  List<Optional<String>> all(Predicate<JointCase> holds) {
    return List.of(thickerDowel(holds), twoDowels(holds), twoDowelsInAHigherRail(holds));
  }
}
