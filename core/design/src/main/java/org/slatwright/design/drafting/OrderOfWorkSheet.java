package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;
import org.slatwright.design.sizing.Rack;

/** How to build it, step by step, with pictures of what stands when. */
final class OrderOfWorkSheet {

  static final String NAME = "order-of-work";
  static final String TITLE = "Order of work";

  private final Map<String, Piece> pieces;
  private final OrderOfWork work;
  private final LengthFormat lengths;
  private final double width;

  private OrderOfWorkSheet(Rack rack, Assembly assembly, OrderOfWork work, double width) {
    this.pieces =
        assembly.pieces().stream().collect(Collectors.toMap(Piece::id, Function.identity()));
    this.work = work;
    this.lengths = rack.lengths();
    this.width = width;
  }

  /** As many sheets as they take; none where there are no steps. */
  static List<SheetDrawing> of(Rack rack, Assembly assembly, OrderOfWork work) {
    return work.steps().isEmpty()
        ? List.of()
        : TextSheet.of(
            rack, NAME, TITLE, width -> new OrderOfWorkSheet(rack, assembly, work, width).texts());
  }

  private List<RunningText<?>> texts() {
    return List.of(
        new RunningText<>(
            "summary",
            "How long it takes",
            summary(),
            (heading, some) -> new Columns(heading, some, width)),
        new RunningText<>("steps", "Steps", rows(), StepRows::new));
  }

  private List<String> summary() {
    return List.of(
        work.steps().size()
            + " steps, about "
            + work.work().words()
            + " of work for one person, and not done before "
            + work.elapsed().words()
            + " after the beginning, nights included.",
        "Glue and finish need their time, and their labels have the last word; other times are rough:"
            + " common practice, no source.",
        "The steps are in an order in which something else is done while glue cures. Another order"
            + " will do as long as each comes after those that it names.",
        "Tick the box when the check of a step is true, and not before.");
  }

  private List<List<StepText>> rows() {
    int across = StepRows.across(width);
    List<List<StepText>> rows = new ArrayList<>();
    List<StepText> texts = texts(StepRows.each(width));
    for (int i = 0; i < texts.size(); i += across) {
      rows.add(texts.subList(i, Math.min(texts.size(), i + across)));
    }
    return rows;
  }

  private List<StepText> texts(double each) {
    Map<Way, Integer> told = new HashMap<>();
    List<StepText> texts = new ArrayList<>();
    for (Step step : work.steps()) {
      Optional<Integer> like = Optional.ofNullable(told.putIfAbsent(Way.of(step), step.number()));
      texts.add(new StepText(new StepWords(step, like, lengths), picture(step), each));
    }
    return texts;
  }

  /** How a step is done: of two frames alike. */
  private record Way(
      List<Wording> doing,
      List<Step.Parts> parts,
      List<String> tools,
      List<Wording> supplies,
      Wording check) {
    static Way of(Step step) {
      return new Way(step.doing(), step.parts(), step.tools(), step.supplies(), step.check());
    }
  }

  private Optional<StepPicture> picture(Step step) {
    return step.shows().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new StepPicture(
                step.shows().stream().map(pieces::get).toList(), Set.copyOf(step.places())));
  }
}
