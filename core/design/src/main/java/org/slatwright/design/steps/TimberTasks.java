package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.sizing.Rack;

/** Before the first cut: the timber is looked over, measured and marked. */
final class TimberTasks {

  static final String SORT = "sort-timber";
  static final String CLEAR = "clear-boards";

  private TimberTasks() {}

  static List<Task> of(Build build) {
    List<Task> tasks = new ArrayList<>(List.of(sort(build)));
    if (build.rack().reclaimed()) {
      tasks.add(clear(build));
    }
    return tasks;
  }

  private static Task sort(Build build) {
    Rack rack = build.rack();
    Task.Draft draft =
        Task.named(SORT, "Sort and mark the timber")
            .does(
                "Measure the frame stock in five places: it is planned as {} × {}, and joints, jig"
                    + " and templates follow it. If yours is different, write that into the rack"
                    + " file and plan again before anything is cut.",
                rack.upright().width(),
                rack.upright().depth())
            .does(
                "Keep the straightest for the uprights. Pencil a face side and a face edge, square"
                    + " to one another, on each piece of frame stock.");
    if (!build.cutting().timbers().isEmpty()) {
      draft.does("Chalk the marks of the cutting diagrams on the boards.");
    }
    int boards =
        build.cutting().timbers().stream()
            .flatMap(timber -> timber.boards().stream())
            .mapToInt(board -> board.marks().size())
            .sum();
    return draft
        .tools("calliper", "square", "pencil", "chalk")
        .takes(Times.SET_UP + Times.MARK * boards)
        .endsWhen(
            "Every board has its mark, and no frame stock is off by more than {}.",
            rack.units().metricOrInch(Length.roundedMm(0.3), Length.inches(1, 64)));
  }

  private static Task clear(Build build) {
    int boards = build.rack().supplies().boards().size();
    return Task.named(CLEAR, "Clear the old boards")
        .does(
            "Look for stamps, stains and paint first: leave a board that you do not know to be"
                + " harmless.")
        .does(
            "Pull every nail, or ring it with chalk, then sweep both faces with a metal detector.")
        .does("Brush off grit, which blunts blades as much as nails do.")
        .tools("nail puller", "metal detector", "wire brush", "chalk")
        .takes(Times.SET_UP + Times.NAILS_OF_A_BOARD * boards)
        .after(SORT)
        .minding(
            "A nail that a blade meets flies. Paint from before 1978 may hold lead: have it"
                + " tested, do not sand it. Of pallets take only those stamped HT or DH.")
        .endsWhen("The detector is silent wherever a piece is marked out.");
  }
}
