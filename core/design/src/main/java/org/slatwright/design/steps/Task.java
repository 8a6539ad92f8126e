package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/**
 * A step before it has its place in the order.
 *
 * @param needs what must be done before
 */
record Task(
    String id,
    String title,
    List<Wording> doing,
    List<Step.Parts> parts,
    List<String> places,
    List<String> shows,
    List<String> tools,
    List<Wording> supplies,
    Minutes work,
    Optional<Step.Wait> then,
    List<Need> needs,
    Wording check,
    String caution) {

  /**
   * A task that must be done before.
   *
   * @param waits whether what it waits for must have passed as well
   */
  record Need(String id, boolean waits) {}

  /** The beginning of one; {@link Draft#endsWhen} ends it, so that none is without a check. */
  static Draft named(String id, String title) {
    return new Draft(id, title);
  }

  Step numbered(int number, List<Integer> after) {
    return new Step(
        number, id, title, doing, parts, places, shows, tools, supplies, work, then, after, check,
        caution);
  }

  /** A task that is being told. */
  static final class Draft {

    private final String id;
    private final String title;
    private final List<Wording> doing = new ArrayList<>();
    private final List<Step.Parts> parts = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    private final List<String> shows = new ArrayList<>();
    private final List<String> tools = new ArrayList<>();
    private final List<Wording> supplies = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private Minutes work = Minutes.ZERO;
    private Optional<Step.Wait> then = Optional.empty();
    private String caution = "";

    private Draft(String id, String title) {
      this.id = id;
      this.title = title;
    }

    Draft does(String words, Length... lengths) {
      return does(Wording.of(words, lengths));
    }

    Draft does(Wording sentence) {
      doing.add(sentence);
      return this;
    }

    Draft with(List<Step.Parts> more) {
      parts.addAll(more);
      return this;
    }

    Draft with(String mark, int count) {
      return with(List.of(new Step.Parts(mark, count)));
    }

    Draft placing(List<String> pieces) {
      places.addAll(pieces);
      return this;
    }

    /** In a picture. */
    Draft showing(List<String> pieces) {
      shows.addAll(pieces);
      return this;
    }

    Draft tools(String... more) {
      tools.addAll(List.of(more));
      return this;
    }

    Draft supplies(String words, Length... lengths) {
      supplies.add(Wording.of(words, lengths));
      return this;
    }

    Draft takes(double minutes) {
      work = new Minutes((int) Math.ceil(minutes / Times.FINEST) * Times.FINEST);
      return this;
    }

    Draft waits(Minutes time, String why) {
      then = Optional.of(new Step.Wait(time, why));
      return this;
    }

    Draft after(String... ids) {
      List.of(ids).forEach(other -> needs.add(new Need(other, true)));
      return this;
    }

    /** While what that task waits for may still be passing. */
    Draft meanwhile(String other) {
      needs.add(new Need(other, false));
      return this;
    }

    Draft minding(String what) {
      caution = what;
      return this;
    }

    Task endsWhen(String words, Length... lengths) {
      return endsWhen(Wording.of(words, lengths));
    }

    Task endsWhen(Wording check) {
      return new Task(
          id,
          title,
          List.copyOf(doing),
          List.copyOf(parts),
          List.copyOf(places),
          List.copyOf(shows),
          List.copyOf(tools),
          List.copyOf(supplies),
          work,
          then,
          List.copyOf(needs),
          check,
          caution);
    }
  }
}
