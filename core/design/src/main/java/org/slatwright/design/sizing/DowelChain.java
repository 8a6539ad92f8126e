package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;

/**
 * Along a through dowel: the depth of the upright, then the embedment in the rail.
 *
 * @param length of the dowel
 * @param holeDepth in the rail
 */
record DowelChain(Length uprightDepth, Sized embedment, Length length, Length holeDepth) {

  private static final String EMBEDMENT = "joint.embedment";
  private static final String LENGTH = "timber.dowel.length";

  static Optional<DowelChain> close(
      Worksheet sheet, Length diameter, Length uprightDepth, Length rail) {
    return new Solver(sheet, diameter, uprightDepth, rail).close();
  }

  /** The shortest rail, to the nanometre, in which the holes from both ends keep apart. */
  static Length shortestRail(Worksheet sheet, Length diameter, Length uprightDepth) {
    return new Solver(sheet, diameter, uprightDepth, Length.ZERO).shortestRail();
  }

  /** The chain as it is printed. */
  Chain chain() {
    return new Links()
        .add("upright", uprightDepth)
        .add("embedment", embedment)
        .closing("dowel", length);
  }

  private record Solver(Worksheet sheet, Length diameter, Length depth, Length rail) {

    Optional<DowelChain> close() {
      return embedment().flatMap(this::apart);
    }

    private Length glueRoom() {
      return DowelSizes.glueRoom(sheet.file().units());
    }

    /** The deepest embedment that leaves a diameter of wood between the two holes of a rail. */
    private Length deepest() {
      return rail.minus(diameter).half().minus(glueRoom()).snappedDown(sheet.increment());
    }

    /** By the rule of {@link DowelSizes}, or as deep as the rail allows. */
    private Length usual() {
      return Length.min(DowelSizes.embedment(diameter, sheet.increment()), deepest());
    }

    Length shortestRail() {
      Optional<Length> given =
          sheet
              .file()
              .joint()
              .embedment()
              .map(Given::value)
              .or(() -> sheet.file().timber().dowel().length().map(l -> l.value().minus(depth)));
      return given.isPresent()
          ? given.get().plus(glueRoom()).times(2).plus(new Length(1))
          : sheet.increment().plus(glueRoom()).times(2).plus(diameter);
    }

    private Optional<Sized> embedment() {
      Optional<Given<Length>> embedment = sheet.file().joint().embedment();
      Optional<Given<Length>> length = sheet.file().timber().dowel().length();
      if (length.isEmpty()) {
        return embedment.isPresent()
            ? embedment.map(given -> Sized.given(given.value()))
            : byRule();
      }
      return embedment.isPresent() ? agreeing(embedment.get(), length.get()) : leftBy(length.get());
    }

    private Optional<Sized> leftBy(Given<Length> length) {
      Length left = length.value().minus(depth);
      if (!left.isPositive()) {
        return sheet.complain(
            length.place(),
            "a dowel of %s does not reach through the upright, which is %s deep"
                .formatted(sheet.show(length.value()), sheet.show(depth)),
            lengthChange(usual()));
      }
      sheet.note(
          EMBEDMENT,
          "dowels of %s reach %s into the rails"
              .formatted(sheet.show(length.value()), sheet.show(left)),
          "");
      return Optional.of(Sized.solved(left));
    }

    private Optional<Sized> agreeing(Given<Length> embedment, Given<Length> length) {
      Length left = length.value().minus(depth);
      if (left.equals(embedment.value())) {
        return Optional.of(Sized.given(left));
      }
      Length needed = depth.plus(embedment.value());
      Length off = length.value().minus(needed);
      List<Problem.Change> changes = new ArrayList<>(embedmentChange(left));
      changes.addAll(lengthChange(embedment.value()));
      return sheet.complain(
          length.place(),
          "a dowel through %s of upright and %s into the rail is %s long; %s is %s too %s"
              .formatted(
                  sheet.show(depth),
                  sheet.show(embedment.value()),
                  sheet.show(needed),
                  sheet.show(length.value()),
                  sheet.show(off.abs()),
                  off.isNegative() ? "short" : "long"),
          changes);
    }

    private Optional<Sized> byRule() {
      Length wanted = DowelSizes.embedment(diameter, sheet.increment());
      Length chosen = usual();
      if (!chosen.isPositive()) {
        return sheet.complain(
            sheet.place("rack.rail-length"),
            "rails of %s are too short for dowels of %s from both ends"
                .formatted(sheet.show(rail), sheet.show(diameter)));
      }
      if (chosen.equals(wanted)) {
        sheet.note(
            EMBEDMENT,
            "dowels reach %s into the rails: %s3 1/2 diameters"
                .formatted(sheet.show(chosen), isRoundedUp(chosen) ? "at least " : ""),
            "");
      } else {
        sheet.warn(
            EMBEDMENT,
            "dowels reach only %s into the rails, which are too short for 3 1/2 diameters, %s"
                .formatted(sheet.show(chosen), sheet.show(wanted)),
            "longer rails or thinner dowels");
      }
      return Optional.of(Sized.solved(chosen));
    }

    private boolean isRoundedUp(Length embedment) {
      return embedment.times(2).isMoreThan(diameter.times(7));
    }

    /** With the holes from both ends of a rail apart. */
    private Optional<DowelChain> apart(Sized embedment) {
      Length hole = embedment.length().plus(glueRoom());
      if (hole.times(2).isLessThan(rail)) {
        return Optional.of(new DowelChain(depth, embedment, depth.plus(embedment.length()), hole));
      }
      RackFile file = sheet.file();
      boolean fromLength = file.joint().embedment().isEmpty();
      return sheet.complain(
          file.joint()
              .embedment()
              .or(() -> file.timber().dowel().length())
              .map(Given::place)
              .orElseGet(() -> sheet.place("joint")),
          "holes %s deep from both ends meet in a rail of %s"
              .formatted(sheet.show(hole), sheet.show(rail)),
          fromLength ? lengthChange(usual()) : embedmentAlone());
    }

    /** Only where no dowel length is given that would then disagree. */
    private List<Problem.Change> embedmentAlone() {
      return sheet.file().timber().dowel().length().isEmpty()
          ? embedmentChange(usual())
          : List.of();
    }

    private List<Problem.Change> embedmentChange(Length embedment) {
      boolean comesOutOfRod = new LongestStock(sheet).holdsDowel(depth.plus(embedment));
      return fits(embedment) && comesOutOfRod
          ? List.of(sheet.change(EMBEDMENT, embedment, sheet.show(embedment) + " deep in the rail"))
          : List.of();
    }

    private List<Problem.Change> lengthChange(Length embedment) {
      return fits(embedment)
          ? List.of(
              sheet.change(
                  LENGTH,
                  depth.plus(embedment),
                  "dowels of %s, %s deep in the rail"
                      .formatted(sheet.show(depth.plus(embedment)), sheet.show(embedment))))
          : List.of();
    }

    private boolean fits(Length embedment) {
      return embedment.isPositive() && embedment.plus(glueRoom()).times(2).isLessThan(rail);
    }
  }
}
