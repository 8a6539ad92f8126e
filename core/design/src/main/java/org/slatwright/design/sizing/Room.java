package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Fit;

/**
 * What a bay has room for.
 *
 * @param width between two frames
 * @param rail length of the rails, which the slats cover
 * @param clears clear heights from the floor up; above the top shelf all is open
 */
record Room(Length width, Length rail, List<Length> clears) {

  /** How much of each thing goes on each shelf. */
  List<Fit> fits(Things things) {
    return things.all().stream()
        .flatMap(thing -> IntStream.rangeClosed(0, clears.size()).mapToObj(i -> fit(thing, i)))
        .toList();
  }

  /** What does not go in as the rack file asks, thing by thing. */
  List<Misfit> misfits(Things things) {
    return things.all().stream().flatMap(this::misfits).toList();
  }

  private Fit fit(Thing thing, int shelf) {
    Optional<Length> clear =
        shelf < clears.size() ? Optional.of(clears.get(shelf)) : Optional.empty();
    boolean enough =
        !thing.needAcross().isMoreThan(width)
            && !thing.needDeep().isMoreThan(rail)
            && clear.filter(thing.needAbove()::isMoreThan).isEmpty();
    return new Fit(
        thing.name(),
        shelf + 1,
        thing.turned(),
        thing.mostAcross(width),
        thing.mostDeep(rail),
        clear.map(thing::mostHigh),
        thing.spareAcross(width),
        thing.spareDeep(rail),
        clear.map(thing::spareAbove),
        enough);
  }

  private Stream<Misfit> misfits(Thing thing) {
    Stream<Misfit> onTheShelf =
        Stream.of(
                new Misfit(thing, Misfit.Way.ACROSS, thing.needAcross(), width),
                new Misfit(thing, Misfit.Way.DEEP, thing.needDeep(), rail))
            .filter(misfit -> misfit.lack().isPositive());
    Stream<Misfit> above =
        clears.stream()
            .reduce(Length::max)
            .map(highest -> new Misfit(thing, Misfit.Way.ABOVE, thing.needAbove(), highest))
            .filter(misfit -> misfit.lack().isPositive())
            .stream();
    return Stream.concat(onTheShelf, above);
  }
}
